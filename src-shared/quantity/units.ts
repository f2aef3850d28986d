/** A unit of length that may be typed. Units of one family may follow each other: 2 ft 9 in. */
export interface LengthUnit {
  readonly symbol: string
  /** Millimetres in it, as a fraction of whole numbers: 12 in is then 304.8 mm and not 304.79999999999995. */
  readonly numerator: number
  readonly denominator: number
  readonly family: 'metric' | 'inch'
}

/** The inch is 25.4 mm by definition. */
export const inchMm = 25.4

/**
 * Millimetres in the unit that lengths are shown in.
 *
 * @example 50.8 / unitMm('in') // 2
 */
export function unitMm(unit: 'mm' | 'in'): number {
  return unit === 'mm' ? 1 : inchMm
}

const micrometre: LengthUnit = { symbol: 'µm', numerator: 1, denominator: 1000, family: 'metric' }
/** The unit of the library. */
export const millimetre: LengthUnit = { symbol: 'mm', numerator: 1, denominator: 1, family: 'metric' }
const centimetre: LengthUnit = { symbol: 'cm', numerator: 10, denominator: 1, family: 'metric' }
const metre: LengthUnit = { symbol: 'm', numerator: 1000, denominator: 1, family: 'metric' }
const thousandth: LengthUnit = { symbol: 'thou', numerator: 254, denominator: 10_000, family: 'inch' }
/** The other unit that a field may take bare numbers in. */
export const inch: LengthUnit = { symbol: 'in', numerator: 254, denominator: 10, family: 'inch' }
const foot: LengthUnit = { symbol: 'ft', numerator: 3048, denominator: 10, family: 'inch' }

const unitOfWord: ReadonlyMap<string, LengthUnit> = new Map([
  ['um', micrometre],
  ['mm', millimetre],
  ['cm', centimetre],
  ['m', metre],
  ['thou', thousandth],
  ['mil', thousandth],
  ['mils', thousandth],
  ['in', inch],
  ['inch', inch],
  ['inches', inch],
  ['"', inch],
  ['ft', foot],
  ['foot', foot],
  ['feet', foot],
  ["'", foot],
])

/**
 * The unit that a typed word or mark stands for. Capitals count, so that `Mm` is not taken for `mm`.
 *
 * @example lengthUnit("'")?.symbol // 'ft'
 */
export function lengthUnit(word: string): LengthUnit | undefined {
  return unitOfWord.get(word)
}

/**
 * A number of a unit in millimetres.
 *
 * @example inMillimetres(12, inch) // 304.8
 */
export function inMillimetres(count: number, unit: LengthUnit): number {
  return (count * unit.numerator) / unit.denominator
}
