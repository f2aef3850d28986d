import type { Source } from './sources.ts'

/** Sheets of the window as a whole: a page or a dialog may add to what they define. */
export const sharedSheets = ['tokens.css', 'controls.css', 'window.css'].map(
  (name) => `src-renderer/look/${name}`,
)

/** The classes that a sheet styles on their own (`.name {`), wherever in it they stand. */
export function classesOf({ text }: Source): readonly string[] {
  const plain = text.replaceAll(/\/\*[\s\S]*?\*\//g, '')
  const selectors = [...plain.matchAll(/([^{};]+)\{/g)].flatMap((rule) => rule[1]!.split(','))
  const alone = selectors.map((selector) => selector.trim()).filter((name) => /^\.[\w-]+$/.test(name))
  return [...new Set(alone)]
}

/** Classes that two sheets or more define, none of them shared, each with where it stands. */
export function classesDefinedTwice(sheets: readonly Source[]): readonly string[] {
  const placesOf = new Map<string, readonly string[]>()
  for (const sheet of sheets.filter(({ path }) => !sharedSheets.includes(path))) {
    for (const name of classesOf(sheet)) placesOf.set(name, [...(placesOf.get(name) ?? []), sheet.path])
  }
  return [...placesOf]
    .filter(([, places]) => places.length > 1)
    .map(([name, places]) => `${name} in ${places.join(', ')}`)
}
