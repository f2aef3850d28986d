/** A unit that a heading may name. */
export type HeadingUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft'

/** `in` is a preposition too: it is the unit in brackets or as the last word. */
const signs: readonly (readonly [HeadingUnit, RegExp])[] = [
  ['mm', /\bmm\b|\bmillimet/i],
  ['cm', /\bcm\b|\bcentimet/i],
  ['m', /\bm\b|\bmet(?:re|er)s?\b/i],
  ['in', /\binch(?:es)?\b|[([]\s*in\.?\s*[)\]]|\bin\W*$/i],
  ['ft', /\b(?:ft|foot|feet)\b/i],
]

/**
 * The unit of length that a heading names; `null` where it names none.
 *
 * @example headingUnit('length in mm') // 'mm'
 * @example headingUnit('tube, in') // 'in'
 */
export function headingUnit(heading: string): HeadingUnit | null {
  return signs.find(([, sign]) => sign.test(heading))?.[0] ?? null
}
