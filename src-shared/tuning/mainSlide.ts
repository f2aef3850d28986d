import { centsBetween, ratioOfCents } from '../pitch/cents.ts'
import { nearestMidi, targetHz } from '../pitch/reference.ts'
import { openLengthMm } from '../tubing/openRoute.ts'
import type { Instrument } from './instrument.ts'

/** Where the tuning puts the main slide. */
export interface MainSlideSetting {
  /** Effective open length as designed, mm. */
  readonly nominalOpenMm: number
  /** Effective open length with the main slide set, mm. */
  readonly openMm: number
  /** Movement from where the slide stands, mm out (not tube); negative: push in. */
  readonly movementMm: number
  /** The note the harmonic was tuned to, midi; `null` without tuning. */
  readonly midi: number | null
  /** Movement that the slide cannot make, mm out: beyond its travel (positive) or its stop (negative); else 0. */
  readonly beyondMm: number
}

/**
 * Sets the main slide. With `open` tuning the named harmonic of the open route, its measured offset and the
 * playing temperature included, is brought to the nearest note: `L′ = L·2^(e/1200)` for an error of e cents.
 *
 * @example setMainSlide({ ...instrument, tuning: { kind: 'none' } }).movementMm // 0
 */
export function setMainSlide(instrument: Instrument): MainSlideSetting {
  const nominalOpenMm = openLengthMm(instrument.speedOfSoundMps, instrument.fundamentalHz)
  if (instrument.tuning.kind === 'none') {
    return { nominalOpenMm, openMm: nominalOpenMm, movementMm: 0, midi: null, beyondMm: 0 }
  }
  const { harmonic } = instrument.tuning
  const hz =
    (harmonic * instrument.fundamentalHz * instrument.playedSpeedOfSoundMps) / instrument.speedOfSoundMps
  const soundingHz = hz * ratioOfCents(instrument.harmonicOffsetsCents[harmonic] ?? 0)
  const midi = nearestMidi(soundingHz, instrument.reference.a4Hz)
  const openMm = nominalOpenMm * ratioOfCents(centsBetween(targetHz(midi, instrument.reference), soundingHz))
  const movementMm = (openMm - nominalOpenMm) / 2
  return { nominalOpenMm, openMm, movementMm, midi, beyondMm: beyondTravelMm(instrument, movementMm) }
}

function beyondTravelMm({ mainSlide }: Instrument, movementMm: number): number {
  if (mainSlide === null) return 0
  const outMm = mainSlide.outMm + movementMm
  return outMm < 0 ? outMm : Math.max(0, outMm - mainSlide.travelMm)
}
