import { unitMm } from './units.ts'

/** What stands where there is no figure. */
const noFigure = '—'

/**
 * A figure for people: a fixed number of decimals, a true minus sign, and no sign on what rounds to zero. A value
 * that is not finite is written as a dash.
 *
 * @example plainFigure(-12.345, 1) // '−12.3'
 */
export function plainFigure(value: number, digits: number): string {
  if (!Number.isFinite(value)) return noFigure
  const size = Math.abs(value).toFixed(digits)
  return value < 0 && Number(size) !== 0 ? `−${size}` : size
}

/**
 * A figure with its decimals, and a whole number with none.
 *
 * @example briefFigure(440, 1) // '440'
 */
export function briefFigure(value: number, digits: number): string {
  return plainFigure(value, Number.isInteger(value) ? 0 : digits)
}

/**
 * A figure for people with its sign, as `plainFigure` writes it: more has a plus, less a true minus, what rounds to
 * zero neither.
 *
 * @example signedFigure(2.04, 1) // '+2.0'
 */
export function signedFigure(value: number, digits: number): string {
  const figure = plainFigure(value, digits)
  return value > 0 && Number(figure) !== 0 && figure !== noFigure ? `+${figure}` : figure
}

/**
 * Cents for people: sharp has a plus, flat a true minus, what rounds to zero neither. A value that is not finite
 * is written as a dash.
 *
 * @example signedCents(7.86) // '+7.9'
 */
export function signedCents(cents: number, digits = 1): string {
  return signedFigure(cents, digits)
}

/**
 * A length for people with its unit, in millimetres or decimal inches. One decimal for millimetres and three for
 * inches unless told: what a bench can hold.
 *
 * @example lengthText(25.4, 'in') // '1.000 in'
 */
export function lengthText(lengthMm: number, unit: 'mm' | 'in', digits = unit === 'mm' ? 1 : 3): string {
  if (!Number.isFinite(lengthMm)) return noFigure
  return `${plainFigure(lengthMm / unitMm(unit), digits)} ${unit}`
}
