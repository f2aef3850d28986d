import { centsBetween, ratioOfCents } from '../pitch/cents.ts'
import { nearestNote, targetHz } from '../pitch/reference.ts'
import { openLengthMm } from '../tubing/openRoute.ts'
import { tubeForCentsMm } from '../tubing/slideMovement.ts'
import type { Instrument } from './instrument.ts'

/** Where the tuning puts the main slide. */
export interface MainSlideSetting {
  /** Effective open length as designed, mm. */
  readonly nominalOpenMm: number
  /** Effective open length with the main slide set, mm; the open note's detuning is in it. */
  readonly openMm: number
  /** The same without that detuning, mm: the length from which required lengths are taken. */
  readonly inTuneOpenMm: number
  /** Movement from where the slide stands, mm out (not tube); negative: push in. */
  readonly movementMm: number
  /** The note the harmonic was tuned to, midi; `null` without tuning. */
  readonly midi: number | null
  /** Movement that the slide cannot make, mm out: beyond its travel (positive) or its stop (negative); else 0. */
  readonly beyondMm: number
}

/**
 * Sets the main slide. With `open` tuning the named harmonic of the open route, its measured offset and the
 * playing temperature included, is brought to the nearest note of the temperament: `L′ = L·2^(e/1200)` for an error of e cents.
 * An open note that is to stand off its pitch on purpose then moves the slide on.
 *
 * @example setMainSlide({ ...instrument, tuning: { kind: 'none' } }).movementMm // 0
 */
export function setMainSlide(instrument: Instrument): MainSlideSetting {
  const nominalOpenMm = openLengthMm(instrument.speedOfSoundMps, instrument.fundamentalHz)
  const { midi, inTuneOpenMm } = tunedOpen(instrument, nominalOpenMm)
  const openMm = inTuneOpenMm + tubeForCentsMm(inTuneOpenMm, 0 - instrument.openDetuningCents)
  const movementMm = (openMm - nominalOpenMm) / 2
  const beyondMm = movementMm === 0 ? 0 : beyondTravelMm(instrument, movementMm)
  return { nominalOpenMm, openMm, inTuneOpenMm, movementMm, midi, beyondMm }
}

function tunedOpen(instrument: Instrument, nominalOpenMm: number) {
  if (instrument.tuning.kind === 'none') return { midi: null, inTuneOpenMm: nominalOpenMm }
  const { harmonic } = instrument.tuning
  const hz =
    (harmonic * instrument.fundamentalHz * instrument.playedSpeedOfSoundMps) / instrument.speedOfSoundMps
  const soundingHz = hz * ratioOfCents(instrument.harmonicOffsetsCents[harmonic] ?? 0)
  const midi = nearestNote(soundingHz, instrument.reference)
  const sharpCents = centsBetween(targetHz(midi, instrument.reference), soundingHz)
  return { midi, inTuneOpenMm: nominalOpenMm * ratioOfCents(sharpCents) }
}

function beyondTravelMm({ mainSlide }: Instrument, movementMm: number): number {
  if (mainSlide === null) return 0
  const outMm = mainSlide.outMm + movementMm
  return outMm < 0 ? outMm : Math.max(0, outMm - mainSlide.travelMm)
}
