import { benchFigure, centsText } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { isNear } from './lengthSlips.ts'

const leastA4Hz = 380
const mostA4Hz = 480

/** What an A4 may have been meant as when it is out of range. */
const a4Meanings = [
  { factor: 10, question: 'Is a figure missing? Was' },
  { factor: 0.1, question: 'Is the decimal point or comma missing? Was' },
  { factor: 0.01, question: 'Is the decimal point or comma missing? Was' },
  { factor: 2, question: 'Is it A3? Then A4 is' },
  { factor: 0.5, question: 'Is it A5? Then A4 is' },
] as const

/**
 * Checks a typed A4, Hz: from 380 to 480. Out of range, the finding offers what is likely: 440 for 44 or 4400, or
 * an A of another octave. `null` when it is in range.
 *
 * @example a4Slip('a4Hz', 44)?.message // 'found 44 Hz, expected 380 to 480 Hz. Is a figure missing? Was 440 Hz meant?'
 */
export function a4Slip(field: string, a4Hz: number): Finding | null {
  if (a4Hz >= leastA4Hz && a4Hz <= mostA4Hz) return null
  const expected = `${leastA4Hz} to ${mostA4Hz} Hz`
  const start = `found ${a4Hz} Hz, expected ${expected}.`
  const meaning = a4Meanings.find(({ factor }) => a4Hz * factor >= leastA4Hz && a4Hz * factor <= mostA4Hz)
  if (meaning === undefined) return { field, found: String(a4Hz), expected, message: start }
  const meant = `${Number((a4Hz * meaning.factor).toFixed(3))} Hz`
  const end = meaning.question.endsWith('Was') ? `${meant} meant?` : `${meant}.`
  return { field, found: String(a4Hz), expected, message: `${start} ${meaning.question} ${end}` }
}

/** From here a reading is more likely another note than a length, cents. */
const farCents = 70

/**
 * Checks a reading's cents: hertz typed for cents, a comma lost, or a neighbouring note. `targetHz` is the note
 * that was wanted. `null` when the reading is likely.
 *
 * @example readingSlip('rows[2]', 175.1, 174.6)?.message // '… Is it the frequency in hertz? …'
 */
export function readingSlip(field: string, cents: number, targetHz: number): Finding | null {
  if (Math.abs(cents) <= farCents) return null
  const expected = `−${farCents} to +${farCents} cents`
  const start = `${centsText(cents)} is far off for a reading.`
  const question = isNear(cents, targetHz)
    ? `Is it the frequency in hertz? The note wanted is ${benchFigure(targetHz)} Hz.`
    : Math.abs(cents) > 150
      ? `Is a decimal comma missing, or is it another note’s? ${centsText(cents / 10)} would be likely.`
      : 'Is it read against the neighbouring note, or on another harmonic?'
  return { field, found: centsText(cents), expected, message: `${start} ${question}` }
}

/**
 * Checks that not all readings are the same figure, as when one was copied down the column. Two or more readings;
 * `null` when they differ or there are too few.
 *
 * @example allEqualSlip('rows', [12, 12, 12])?.expected // 'readings that differ'
 */
export function allEqualSlip(field: string, cents: readonly number[]): Finding | null {
  const [first] = cents
  if (first === undefined || cents.length < 2 || cents.some((value) => value !== first)) return null
  const found = `${cents.length} times ${centsText(first)}`
  const message = `All readings are ${centsText(first)}. A leak, the main slide or the player moves every note alike; a loop does not. Was one figure copied down?`
  return { field, found, expected: 'readings that differ', message }
}
