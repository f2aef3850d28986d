import { plainFigure, signedCents } from '../quantity/figures.ts'

/**
 * A length in millimetres as a bench can hold it: one decimal, no sign on what rounds to zero. The value kept is not rounded.
 *
 * @example benchMm(6.449) // '6.4 mm'
 */
export function benchMm(lengthMm: number): string {
  return `${benchFigure(lengthMm)} mm`
}

/**
 * The bare figure of {@link benchMm}, for dimension lines. A value that is not finite throws: it is the
 * caller's mistake to have come so far with it.
 *
 * @example benchFigure(59.690) // '59.7'
 */
export function benchFigure(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`A figure must be finite, not ${value}`)
  return plainFigure(value, 1)
}

/**
 * Cents with their sign, sharp positive.
 *
 * @example centsText(-12.04) // '−12.0 cents'
 */
export function centsText(cents: number): string {
  return `${signedCents(cents)} cents`
}
