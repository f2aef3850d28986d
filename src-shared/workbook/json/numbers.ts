/**
 * A parsed value with every −0 in it made 0: JSON can spell it and nothing is measured by it, but a figure would
 * show its sign, and written back it would be another value. Changes the value in place.
 *
 * @example withoutMinusZero(JSON.parse('[-0]')) // [0]
 */
export function withoutMinusZero(value: unknown): unknown {
  if (value === 0) return 0
  if (value === null || typeof value !== 'object') return value
  const record = value as Record<PropertyKey, unknown>
  for (const key of keysOf(value)) {
    const inner = record[key]
    if (inner === 0) record[key] = 0
    else withoutMinusZero(inner)
  }
  return value
}

/** Values are never changed, so what was looked through once need not be again: a measured bore has many numbers. */
const allFinite = new WeakSet<object>()

/**
 * Where in a value a number stands that is not finite, or `null`. JSON has no infinity, but it can spell a number
 * too big to hold; written back, it would be lost.
 *
 * @example notFiniteAt(JSON.parse('{"a":[1,1e999]}')) // ['a', 1]
 */
export function notFiniteAt(value: unknown): readonly PropertyKey[] | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : []
  if (value === null || typeof value !== 'object' || allFinite.has(value)) return null
  for (const key of keysOf(value)) {
    const inner = notFiniteAt((value as Record<PropertyKey, unknown>)[key])
    if (inner !== null) return [key, ...inner]
  }
  allFinite.add(value)
  return null
}

function keysOf(value: object): Iterable<PropertyKey> {
  return Array.isArray(value) ? value.keys() : Object.keys(value)
}
