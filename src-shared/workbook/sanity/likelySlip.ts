import { inchMm } from '../../quantity/units.ts'

/** A slip of the tape or the unit, as a factor between what was meant and what was typed. */
interface Slip {
  readonly factor: number
  readonly question: string
}

const slips: readonly Slip[] = [
  { factor: 2, question: 'is it the length of one leg?' },
  { factor: 1 / 2, question: 'is it both ways counted twice?' },
  { factor: inchMm, question: 'is it in inches?' },
  { factor: 1 / inchMm, question: 'were inches turned into millimetres twice?' },
  { factor: 10, question: 'is it in centimetres?' },
  { factor: 1 / 10, question: 'is a decimal point missing?' },
  { factor: 2.54, question: 'were inches read as centimetres?' },
  { factor: 304.8, question: 'is it in feet?' },
  { factor: 1000, question: 'is it in metres?' },
]

/**
 * The likely meaning of a value that does not fit, as a question: the common slip that brings it nearest to what
 * was expected. `null` when none brings it near enough.
 *
 * @param offBy how far a value is from what was expected, 0 or more
 * @param mostOff farthest that still fits
 * @example likelySlip(12, (mm) => Math.abs(mm - 25), 5) // 'is it the length of one leg?'
 */
export function likelySlip(value: number, offBy: (value: number) => number, mostOff: number): string | null {
  let likely: string | null = null
  let leastOff = mostOff
  for (const { factor, question } of slips) {
    const off = offBy(value * factor)
    if (off > leastOff) continue
    leastOff = off
    likely = question
  }
  return likely
}
