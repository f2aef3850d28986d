import { multiples, roundUp } from '../look/roundScale.ts'

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
  const step = roundUp(((high - low) * leastPx) / lengthPx)
  return multiples(step, low, high).map((value) => Number(value.toPrecision(12)))
}
