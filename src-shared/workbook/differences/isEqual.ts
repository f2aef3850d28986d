/**
 * Whether two values of a parsed file hold the same, key order aside. Numbers are compared by `===`; there is no
 * NaN in a file.
 *
 * @example isEqual({ a: 1, b: [2] }, { b: [2], a: 1 }) // true
 */
export function isEqual(one: unknown, other: unknown): boolean {
  if (one === other) return true
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false
  if (Array.isArray(one) !== Array.isArray(other)) return false
  const keys = Object.keys(one)
  if (keys.length !== Object.keys(other).length) return false
  return keys.every(
    (key) => Object.hasOwn(other, key) && isEqual(one[key as keyof object], other[key as keyof object]),
  )
}
