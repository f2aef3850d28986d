import type { Reference } from '../pitch/reference.ts'
import type { Fingering } from '../valves/fingering.ts'
import type { Loop, SlidePosition } from '../valves/loop.ts'
import type { Valve } from '../valves/valve.ts'

/** How the main slide stands: where the design has it, or set so that one open harmonic is at zero. */
export type Tuning = { readonly kind: 'none' } | { readonly kind: 'open'; readonly harmonic: number }

/** The fingering a player chose for a note instead of the usual one. */
export interface ChosenFingering {
  readonly pressed: readonly string[]
  readonly harmonic: number
}

/** Everything that tuning needs to know of one design, its air and its targets; defaults filled in. */
export interface Instrument {
  readonly fundamentalHz: number
  /** Speed of sound in the design's air, m/s: gives the open length. */
  readonly speedOfSoundMps: number
  /** Speed of sound in the air it is played with, m/s; the same as above unless another temperature is asked for. */
  readonly playedSpeedOfSoundMps: number
  readonly valves: readonly Valve[]
  readonly loops: readonly Loop[]
  readonly fingerings: 'all' | readonly Fingering[]
  /** First and last harmonic of the compass. */
  readonly harmonics: readonly [number, number]
  /** Measured offset of a harmonic, cents, by its number. */
  readonly harmonicOffsetsCents: Readonly<Record<string, number>>
  /** Sounding minus written, semitones. */
  readonly transposition: number
  /** Chosen fingerings by sounding midi number. */
  readonly chosen: Readonly<Record<string, ChosenFingering>>
  readonly tuning: Tuning
  /** How far the open note is set off its pitch on purpose, cents, sharp positive. */
  readonly openDetuningCents: number
  readonly mainSlide: SlidePosition | null
  readonly reference: Reference
}
