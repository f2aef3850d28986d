/** Signs of units: they are the same in every language. */
const units = new Set(['mm', 'in', 'Hz', 'cents', 'ppm', 'hPa', 'px', 'g/cm³'])

/** Texts that look like words and that nobody reads, or that are written alike in every language. */
const others: readonly { readonly form: RegExp; readonly why: string }[] = [
  { form: /^\.[a-z]{3,4}$/, why: 'the ending of a file name' },
  { form: /^ferrule [a-z ]+$/, why: 'the name under which the browser keeps a setting' },
  { form: /^@page \{|format\("woff2"\)|^\) rotate\(/, why: 'a part of a style sheet or of a drawing' },
  { form: /^@page report \{|^"; font: 8pt/, why: 'a style sheet' },
  { form: /^lengthMm$/, why: 'a part of the key of a dimension' },
  { form: /^none$/, why: 'no bands of doubt are drawn' },
  { form: /^(bore|lengths)$/, why: 'the name of a worker' },
  { form: /^given up$/, why: 'what work fails with that was given up; it is told apart by it, not shown' },
]

/** Whether a text may stand in the code: `13px`, `Hz.`, `.svg`. */
export function isAllowed(text: string): boolean {
  const bare = text.replace(/^\d+/, '').replace(/[.,;:]$/, '')
  return units.has(bare) || others.some(({ form }) => form.test(text))
}

/** The exceptions that no text of the program needs any more. */
export function unneeded(texts: readonly string[]): readonly string[] {
  return others.filter(({ form }) => !texts.some((text) => form.test(text))).map(({ why }) => why)
}
