import { centsBetween } from '../pitch/cents.ts'
import { warmPartials } from './warmTone.ts'

/** How one partial of a note beats with the same partial of its target. */
export interface PartialBeat {
  readonly partial: number
  /** Swells a second. */
  readonly beatHz: number
  /** What this partial adds to the tone, of a sum of 1. */
  readonly amplitude: number
}

/**
 * How fast two tones beat when they sound together, swells a second: the difference of their frequencies.
 * `cos a + cos b = 2·cos((a−b)/2)·cos((a+b)/2)`, and the ear hears the size of the first factor, which comes
 * round `|f − g|` times a second.
 *
 * @example beatHz(442, 440) // 2
 */
export function beatHz(noteHz: number, targetHz: number): number {
  return Math.abs(noteHz - targetHz)
}

/**
 * The beats of a note against its target, partial by partial: partial n of one meets partial n of the other and
 * beats n times as fast as the first.
 *
 * @throws RangeError for a frequency that is not above 0
 * @example partialBeats(222, 220)[1] // { partial: 2, beatHz: 4, amplitude: 0.21 }
 */
export function partialBeats(noteHz: number, targetHz: number): readonly PartialBeat[] {
  const first = beatHz(noteHz, targetHz)
  return warmPartials(Math.max(noteHz, targetHz)).map((amplitude, i) => ({
    partial: i + 1,
    beatHz: (i + 1) * first,
    amplitude,
  }))
}

/** Where the partials of two notes of a chord all but meet, and how fast they beat there. */
export interface Meeting {
  /** Partial of the lower note. */
  readonly lowPartial: number
  /** Partial of the higher note. */
  readonly highPartial: number
  readonly beatHz: number
}

/** Intervals whose partials meet low enough to be heard beating: lower note's partial over the higher's. */
const consonances = [
  [1, 1],
  [2, 1],
  [3, 2],
  [3, 1],
  [4, 3],
  [4, 1],
  [5, 3],
  [5, 4],
  [5, 2],
  [6, 5],
  [6, 1],
] as const

/** Farther than this from a consonance, two notes are heard as another interval, cents. */
const reachCents = 50

/**
 * The lowest pair of partials at which two notes beat: a fifth's third against second, a major third's fifth
 * against fourth, and so on up to the sixth partial. `null` for an interval that none of these is within 50 cents
 * of.
 *
 * @param lowHz and `highHz` frequencies above 0, the lower one first
 * @example meetingOf(200, 301) // { lowPartial: 3, highPartial: 2, beatHz: 2 }
 */
export function meetingOf(lowHz: number, highHz: number): Meeting | null {
  let nearest: Meeting | null = null
  let nearestCents = reachCents
  for (const [lowPartial, highPartial] of consonances) {
    const apartCents = Math.abs(centsBetween(lowPartial * lowHz, highPartial * highHz))
    if (apartCents >= nearestCents) continue
    nearestCents = apartCents
    nearest = { lowPartial, highPartial, beatHz: beatHz(lowPartial * lowHz, highPartial * highHz) }
  }
  return nearest
}
