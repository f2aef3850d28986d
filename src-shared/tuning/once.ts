/**
 * Puts work off until its result is first asked for, and keeps the result.
 *
 * @example const notes = once(() => noteTable(instrument, combinations, fingerings))
 */
export function once<Value extends object>(work: () => Value): () => Value {
  let kept: Value | undefined
  return () => (kept ??= work())
}
