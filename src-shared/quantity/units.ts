/** A unit of length that may be typed. Units of one family may follow each other: 2 ft 9 in. */
export interface LengthUnit {
  /** Its name in the calculation. */
  readonly symbol: string
  readonly lengthMm: number
  readonly family: 'metric' | 'inch'
}

/** The inch is 25.4 mm by definition. */
export const inchMm = 25.4

const unit = (symbol: string, lengthMm: number, family: LengthUnit['family']): LengthUnit => ({
  symbol,
  lengthMm,
  family,
})

const micrometre = unit('um', 0.001, 'metric')
const millimetre = unit('mm', 1, 'metric')
const centimetre = unit('cm', 10, 'metric')
const metre = unit('m', 1000, 'metric')
const thousandth = unit('thou', inchMm / 1000, 'inch')
const inch = unit('inch', inchMm, 'inch')
const foot = unit('ft', 12 * inchMm, 'inch')

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
