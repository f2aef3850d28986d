import { inchMm } from '../../quantity/units.ts'
import { dropOfLoopCents } from '../../tubing/requiredLength.ts'
import { benchMm } from '../figures.ts'
import type { Finding } from '../finding.ts'

/** A meaning that a wrong figure may have had: multiply what was typed by `factor` to get what was meant. */
interface Meaning {
  readonly factor: number
  readonly question: string
}

/** Slips of the trade, in the order in which they are offered. */
const meanings: readonly Meaning[] = [
  { factor: 2, question: 'Is it the length of one leg? Then the whole is' },
  { factor: 0.5, question: 'Is it the whole where one leg was asked for? Then a leg is' },
  { factor: 2.54, question: 'Is it inches, typed as centimetres? Then it is' },
  { factor: 1 / 2.54, question: 'Is it centimetres, typed as inches? Then it is' },
  { factor: inchMm, question: 'Is it inches? Then it is' },
  { factor: 1 / inchMm, question: 'Is it millimetres, typed as inches? Then it is' },
  { factor: 10, question: 'Is it centimetres, or is the decimal point one place off? Then it is' },
  { factor: 0.1, question: 'Is the decimal point or comma one place off? Then it is' },
  { factor: 100, question: 'Is the decimal point two places off? Then it is' },
  { factor: 0.01, question: 'Is the decimal point or comma two places off? Then it is' },
  { factor: 304.8, question: 'Is it feet? Then it is' },
  { factor: 1000, question: 'Is it metres? Then it is' },
  { factor: 0.001, question: 'Is it thousandths of a millimetre, or a lost decimal comma? Then it is' },
]

/** A loop may be this far from nominal before it is thought a slip: loops are made long and short for a purpose. */
export const slipFromCents = 60
/** From here a loop is looked at, for a slip moves a short loop by less: half a semitone's loop is 49 cents off. */
export const lookFromCents = 20
/** How near to nominal another meaning must come to be offered, as a share of the length. */
export const nearShare = 0.12

/**
 * What a length that does not fit may have been meant as: a leg for the whole, inches for centimetres or
 * millimetres, a decimal comma lost. Each finding offers one meaning; none changes what was typed. Empty when no
 * meaning comes near. Both lengths in mm, above 0.
 *
 * @example lengthSlips('loops.L3', 132, 265)[0]?.message // '132.0 mm was found … the whole is 264.0 mm.'
 */
export function lengthSlips(field: string, foundMm: number, expectedMm: number): readonly Finding[] {
  const fitting = meanings.filter(({ factor }) => isNear(foundMm * factor, expectedMm))
  return fitting.map(({ factor, question }) => ({
    field,
    found: benchMm(foundMm),
    expected: `about ${benchMm(expectedMm)}`,
    message: `Found ${benchMm(foundMm)}, expected about ${benchMm(expectedMm)}. ${question} ${benchMm(foundMm * factor)}.`,
  }))
}

/** Whether two lengths are so near that one may stand for the other. */
export function isNear(lengthMm: number, expectedMm: number): boolean {
  return Math.abs(lengthMm - expectedMm) <= nearShare * expectedMm
}

/**
 * How far a loop takes its valve's note from nominal, cents; sharp, positive, when the loop is too short.
 *
 * @example loopErrorCents(3951.6, 373.8, 3) // 143.5
 */
export function loopErrorCents(openLengthMm: number, loopMm: number, semitones: number): number {
  return 100 * semitones - dropOfLoopCents(openLengthMm, loopMm)
}
