/**
 * Makes work on a value that is never changed be done once for it: the result stays as long as the value does.
 *
 * @example const rows = keptFor((derived: DerivedDesign) => rowsOf(derived))
 */
export function keptFor<Value extends object, Result>(
  work: (value: Value) => Result,
): (value: Value) => Result {
  const kept = new WeakMap<Value, Result>()
  return (value) => {
    const present = kept.get(value)
    if (present !== undefined) return present
    const result = work(value)
    kept.set(value, result)
    return result
  }
}
