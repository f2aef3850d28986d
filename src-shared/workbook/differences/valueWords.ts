import { keyWords, shortened, unitOfKey } from './placeWords.ts'

/** How many of a whole thing's values are named before an ellipsis. */
const namedValues = 4

/**
 * A value of the file in words, with the unit of its key and in full length, so that two plain values that differ
 * read differently. A whole thing that came or went is told by its first values.
 *
 * @example valueWords('lengthMm', 712.25) // '712.25 mm'
 */
export function valueWords(key: string, value: unknown): string {
  if (typeof value === 'number') return `${String(value).replace('-', '−')}${unitOfKey(key)}`
  if (typeof value === 'string') return value === '' ? 'empty' : `“${value}”`
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (Array.isArray(value)) return listWords(key, value)
  return typeof value === 'object' && value !== null ? partsWords(value) : 'nothing'
}

function listWords(key: string, items: readonly unknown[]): string {
  if (items.length === 0) return 'none'
  if (key === 'pressed' || key === 'released') return items.join('-')
  if (!items.every(isPlain)) return `${items.length} ${keyWords(key)}`
  return `${items.map((item) => String(item).replace('-', '−')).join(', ')}${unitOfKey(key)}`
}

/** Whether a value is a number, a text, a yes or no, or nothing: not made of parts. */
export function isPlain(value: unknown): boolean {
  return typeof value !== 'object' || value === null
}

function partsWords(thing: object): string {
  const parts = Object.entries(thing)
    .filter(([key, value]) => key !== 'id' && key !== 'name' && (isPlain(value) || Array.isArray(value)))
    .map(([key, value]) => partWords(key, value))
  if (parts.length === 0) return 'there'
  return parts.length > namedValues ? `${parts.slice(0, namedValues).join(', ')}, …` : parts.join(', ')
}

function partWords(key: string, value: unknown): string {
  const words = shortened(valueWords(key, value))
  return Array.isArray(value) && !value.every(isPlain) ? words : `${keyWords(key)} ${words}`
}
