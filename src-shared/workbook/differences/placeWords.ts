/** Keys whose words are not simply their parts. */
const wordsOfKey: Readonly<Record<string, string>> = {
  a4Hz: 'A4',
  cents: 'cents',
  co2Fraction: 'carbon dioxide',
  pressed: 'valves down',
  released: 'valves up',
  rows: 'readings',
  outMm: 'slide out',
  travelMm: 'slide travel',
  bench: 'bench',
  chosen: 'chosen fingerings',
}

const unitOfEnding: Readonly<Record<string, string>> = {
  Mm: ' mm',
  Hz: ' Hz',
  Cents: ' cents',
  GPerCm3: ' g/cm³',
  Pa: ' Pa',
  C: ' °C',
}

const endingOfUnit = /(?:GPerCm3|Mm|Hz|Cents|Pa|C)$/

/** One item of a list, by the key of the list. */
const wordsOfItem: Readonly<Record<string, string>> = {
  designs: 'design',
  loops: 'loop',
  valves: 'valve',
  fingerings: 'fingering',
  slides: 'slide',
  readings: 'readings',
  rows: 'reading',
  pitchChanges: 'change of pitch',
  furtherPairs: 'further pair',
  sections: 'section',
}

/**
 * A key of the design file in words, without its unit. A key that is not ours stays as it is, shortened.
 *
 * @example keyWords('legSpacingMm') // 'leg spacing'
 */
export function keyWords(key: string): string {
  const known = Object.hasOwn(wordsOfKey, key) ? wordsOfKey[key] : undefined
  if (known !== undefined) return known
  if (!/^[a-z][a-zA-Z0-9]*$/.test(key)) return key === '' ? '“”' : shortened(key)
  const bare = key.replace(endingOfUnit, '')
  return shortened((bare === '' ? key : bare).replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`))
}

/**
 * The unit in a key's ending, with a space before it; empty where the key has none.
 *
 * @example unitOfKey('lengthMm') // ' mm'
 */
export function unitOfKey(key: string): string {
  const [ending] = endingOfUnit.exec(key) ?? []
  return ending === undefined || ending === key ? '' : (unitOfEnding[ending] ?? '')
}

/**
 * One item of a list in words: by its name or id, else by its place in the list, counted from 1.
 *
 * @example itemWords('loops', { id: 'third' }, 2) // 'loop “third”'
 */
export function itemWords(listKey: string, item: unknown, index: number): string {
  const kind = Object.hasOwn(wordsOfItem, listKey) ? wordsOfItem[listKey]! : keyWords(listKey)
  const called = nameOf(item)
  return called === null ? `${kind} ${index + 1}` : `${kind} “${shortened(called)}”`
}

function nameOf(item: unknown): string | null {
  if (typeof item !== 'object' || item === null) return null
  const { name, id } = item as { readonly name?: unknown; readonly id?: unknown }
  if (typeof name === 'string' && name.trim() !== '') return name
  return typeof id === 'string' && id !== '' ? id : null
}

/** What a line of a table holds, in signs. */
const mostSigns = 60

/**
 * Text cut to what a line of a table holds, with an ellipsis on each side that is cut. Surrogate pairs stay whole.
 * With `from`, the sign that must be seen, a long text begins a little before it.
 *
 * @example shortened('a'.repeat(99)).length // 61
 */
export function shortened(text: string, from = 0): string {
  const signs = [...text]
  const start = from < mostSigns - 10 ? 0 : from - 15
  const cut = signs.slice(start, start + mostSigns).join('')
  return `${start > 0 ? '…' : ''}${cut}${signs.length > start + mostSigns ? '…' : ''}`
}
