import { centsBetween, ratioOfCents } from '../pitch/cents.ts'
import { nearestNote, targetHz } from '../pitch/reference.ts'
import { harmonicHz } from './candidates.ts'
import type { Instrument } from './instrument.ts'

/** One harmonic of the open route beside the tempered scale that stands on the fundamental. */
export interface HarmonicRow {
  readonly harmonic: number
  readonly hz: number
  /** Above the fundamental, cents, the harmonic's measured offset included. */
  readonly intervalCents: number
  /** The nearest step of the tempered scale above the fundamental, semitones. */
  readonly nearestSemitones: number
  /** Against that step, cents, sharp positive. */
  readonly centsFromScale: number
  /** The note of the workbook's scale that it sounds, midi. */
  readonly midi: number
  /** Against that note's target, cents, sharp positive: pitch standard and temperament included. */
  readonly errorCents: number
}

/**
 * The harmonic series of a route against the equally tempered scale that starts on its fundamental: harmonic n
 * lies `1200·log2(n)` cents above it.
 *
 * @param openMm length of the open route as tuned, mm
 * @param highest number of the last harmonic
 * @example harmonicSeries(instrument, 4000, 8)[6]?.centsFromScale // −31.2: the seventh
 */
export function harmonicSeries(
  instrument: Instrument,
  openMm: number,
  highest: number,
): readonly HarmonicRow[] {
  return Array.from({ length: highest }, (_, i) => {
    const harmonic = i + 1
    const intervalCents = centsBetween(1, harmonic) + (instrument.harmonicOffsetsCents[harmonic] ?? 0)
    const nearestSemitones = Math.round(centsBetween(1, harmonic) / 100)
    return {
      ...soundedNote(instrument, openMm, harmonic),
      intervalCents,
      nearestSemitones,
      centsFromScale: intervalCents - 100 * nearestSemitones,
    }
  })
}

/** What one harmonic of a route sounds. */
export type SoundedNote = Pick<HarmonicRow, 'harmonic' | 'hz' | 'midi' | 'errorCents'>

/**
 * The notes that a route sounds on the harmonics of the compass, each beside the note of the workbook's scale
 * that it is nearest to.
 *
 * @param routeMm length of the route, mm
 * @example soundedNotes(instrument, 5297.6).map(({ midi }) => midi) // [36, 43, 48, …] for an F bass on 1-3
 */
export function soundedNotes(instrument: Instrument, routeMm: number): readonly SoundedNote[] {
  const [lowest, highest] = instrument.harmonics
  return Array.from({ length: highest - lowest + 1 }, (_, i) => soundedNote(instrument, routeMm, lowest + i))
}

function soundedNote(instrument: Instrument, routeMm: number, harmonic: number): SoundedNote {
  const { reference } = instrument
  const hz = harmonicHz(instrument, routeMm, harmonic)
  const midi = nearestNote(hz, reference)
  return { harmonic, hz, midi, errorCents: centsBetween(targetHz(midi, reference), hz) }
}

/**
 * Frequencies of the tempered scale that stands on a fundamental, Hz, from it upwards to `highestHz`.
 *
 * @example scaleOn(100, 200).length // 13
 */
export function scaleOn(fundamentalHz: number, highestHz: number): readonly number[] {
  const steps = Math.floor(centsBetween(fundamentalHz, highestHz) / 100 + 1e-9)
  return Array.from({ length: Math.max(0, steps) + 1 }, (_, step) => fundamentalHz * ratioOfCents(100 * step))
}
