/** Steps that a scale may have, over a power of ten. */
const steps = [1, 2, 5, 10]

/**
 * Round values along a range, so many that two of them are no nearer than `leastPx` on an axis of `lengthPx`.
 *
 * @example roundValues([-20, 30], 100, 30) // [-20, 0, 20]
 */
export function roundValues(
  [low, high]: readonly [number, number],
  lengthPx: number,
  leastPx: number,
): readonly number[] {
  const least = ((high - low) * leastPx) / lengthPx
  const power = 10 ** Math.floor(Math.log10(least))
  const step = power * (steps.find((each) => each * power >= least * (1 - 1e-9)) ?? 10)
  const first = Math.ceil(low / step - 1e-9)
  const last = Math.floor(high / step + 1e-9)
  return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)))
}
