import { centsBetween, ratioOfCents } from './cents.ts'
import { pitchClass } from './noteName.ts'
import { type Temperament, temperamentDeviations } from './temperament.ts'

const midiOfA4 = 69

/** What notes are measured against. */
export interface Reference {
  /** Frequency of A4, Hz; 380 to 480 in a design file. */
  readonly a4Hz: number
  readonly temperament: Temperament
}

/**
 * The reference a new workbook starts with.
 *
 * @example targetHz(69, defaultReference) // 440
 */
export const defaultReference: Reference = { a4Hz: 440, temperament: { kind: 'equal' } }

/**
 * Where a note should be, in cents above midi note 0 of the equal scale on the same A4: 100 a semitone and the
 * note's deviation in the temperament.
 *
 * @throws RangeError for a `midi` that is not a whole number, and as `temperamentDeviations` does
 * @example targetMidiCents(52, { kind: 'just', key: 'C' }) // 5202: the E below middle C
 */
export function targetMidiCents(midi: number, temperament: Temperament): number {
  const deviation = temperamentDeviations(temperament)[pitchClass(midi)]
  if (deviation === undefined) throw new RangeError(`no note has the number ${midi}`)
  return 100 * midi + deviation
}

/**
 * The frequency a note should have, Hz.
 *
 * @throws RangeError for a `midi` that is not a whole number, and as `temperamentDeviations` does
 * @example targetHz(60, { a4Hz: 440, temperament: { kind: 'equal' } }) // 261.6256
 */
export function targetHz(midi: number, reference: Reference): number {
  return hzOfMidiCents(targetMidiCents(midi, reference.temperament), reference.a4Hz)
}

/**
 * The frequency, Hz, of a place on the equal scale given in cents above midi note 0.
 *
 * @example hzOfMidiCents(6900, 442) // 442
 */
export function hzOfMidiCents(midiCents: number, a4Hz: number): number {
  return a4Hz * ratioOfCents(midiCents - 100 * midiOfA4)
}

/**
 * The place of a frequency on the equal scale, in cents above midi note 0. `hz` and `a4Hz` above 0.
 *
 * @example midiCentsOfHz(442, 440) // 6907.85
 */
export function midiCentsOfHz(hz: number, a4Hz: number): number {
  return 100 * midiOfA4 + centsBetween(a4Hz, hz)
}

/**
 * The note of the equal scale that a frequency is nearest to. `hz` and `a4Hz` above 0.
 *
 * @example nearestMidi(43.654, 440) // 29, F1
 */
export function nearestMidi(hz: number, a4Hz: number): number {
  return Math.round(midiCentsOfHz(hz, a4Hz) / 100)
}

/**
 * The note of the reference's scale whose target a frequency is nearest to; of two as near, that of the equal scale.
 *
 * @example nearestNote(175.569, { a4Hz: 480, temperament: { kind: 'just', key: 'C' } }) // 51: E♭3, not E3
 */
export function nearestNote(hz: number, reference: Reference): number {
  const cents = midiCentsOfHz(hz, reference.a4Hz)
  const near = nearestMidi(hz, reference.a4Hz)
  const off = (midi: number): number => Math.abs(cents - targetMidiCents(midi, reference.temperament))
  // A note of any temperament lies within a hundred cents of its place on the equal scale.
  return [near, near - 1, near + 1, near - 2, near + 2].reduce((best, midi) =>
    off(midi) < off(best) - 1e-9 ? midi : best,
  )
}

/**
 * How far a pitch standard lies from A4 = 440 Hz, in cents, sharp positive.
 *
 * @example centsFrom440(452.5) // 48.5
 */
export function centsFrom440(a4Hz: number): number {
  return centsBetween(440, a4Hz)
}
