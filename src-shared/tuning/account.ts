import { centsBetween } from '../pitch/cents.ts'
import { targetHz } from '../pitch/reference.ts'
import { requiredLengthMm, routeErrorCents } from '../tubing/requiredLength.ts'
import { namedFingering } from '../valves/fingerings.ts'
import type { Loop } from '../valves/loop.ts'
import { bitsOf, loopsInRoute, routing } from '../valves/route.ts'
import type { Instrument } from './instrument.ts'
import { setMainSlide } from './mainSlide.ts'

/** One cell taken apart: the terms add up to the total, in cents, positive sharp. */
export interface Account {
  readonly fingering: string
  readonly harmonic: number
  readonly midi: number
  readonly terms: readonly AccountTerm[]
  readonly totalCents: number
  /** Tube in the route with the main slide as tuned, mm. */
  readonly lengthMm: number
  /** Tube that the nominal drop needs on the open route as tuned, its detuning apart, mm. */
  readonly requiredLengthMm: number
}

/** What one cause adds to a note's error. */
export interface AccountTerm {
  readonly cause: AccountCause
  readonly cents: number
}

/** The causes of an error, in the order in which an account lists them. */
export const accountCauses = [
  /** The harmonic series against the tempered scale. */
  'harmonic',
  /** The measured offset of that harmonic. */
  'offset',
  /** Loops too short or too long for the fingering, with every valve slide pushed in. */
  'combination',
  /** What the valve slides' present movement out does. */
  'slidePull',
  /** What setting the main slide does to this route. */
  'tuningSlide',
  /** Playing air against the design's air. */
  'temperature',
  /** The nominal fundamental against A4 and the temperament. */
  'reference',
] as const
/** One cause of an error. */
export type AccountCause = (typeof accountCauses)[number]

/**
 * The account of one cell: why harmonic `harmonic` of the fingering `pressed` is as far from the note `midi` as
 * it is. The terms sum to the total exactly, up to rounding in the last digits.
 *
 * @param pressed valve ids that exist in the instrument
 * @param semitones nominal drop of the fingering; the valves' sum when absent
 * @example accountOf(instrument, ['1', '3'], 3, 53).terms
 */
export function accountOf(
  instrument: Instrument,
  pressed: readonly string[],
  harmonic: number,
  midi: number,
  semitones?: number,
): Account {
  const { nominalOpenMm, openMm, inTuneOpenMm } = setMainSlide(instrument)
  const system = routing(nominalOpenMm, instrument.valves, instrument.loops)
  const fingering = namedFingering(instrument.valves, bitsOf(system, pressed), semitones)
  const inRoute = loopsInRoute(system, fingering.down)
  const nominalMm = inRoute.reduce((sum, loop) => sum + loop.lengthMm, system.bodyMm)
  const pulledMm = inRoute.reduce((sum, loop) => sum + pulledInLoopMm(loop), 0)
  const lengthMm = nominalMm + (openMm - nominalOpenMm)
  const tempered = Math.round(12 * Math.log2(harmonic))
  const terms = [
    term('harmonic', 1200 * Math.log2(harmonic) - 100 * tempered),
    term('offset', instrument.harmonicOffsetsCents[harmonic] ?? 0),
    term(
      'combination',
      routeErrorCents(requiredLengthMm(nominalOpenMm, fingering.semitones), nominalMm - pulledMm),
    ),
    term('slidePull', routeErrorCents(nominalMm - pulledMm, nominalMm)),
    term('tuningSlide', routeErrorCents(nominalMm, lengthMm)),
    term('temperature', centsBetween(instrument.speedOfSoundMps, instrument.playedSpeedOfSoundMps)),
    term('reference', referenceCents(instrument, midi, fingering.semitones - tempered)),
  ]
  return {
    fingering: fingering.name,
    harmonic,
    midi,
    terms,
    totalCents: terms.reduce((sum, { cents }) => sum + cents, 0),
    lengthMm,
    requiredLengthMm: requiredLengthMm(inTuneOpenMm, fingering.semitones),
  }
}

/** A slide that is out farther than its loop is long has no more than the loop to give. */
function pulledInLoopMm({ lengthMm, slide }: Loop): number {
  return Math.min(2 * (slide?.outMm ?? 0), lengthMm)
}

function term(cause: AccountCause, cents: number): AccountTerm {
  return { cause, cents }
}

/** The nominal fundamental against the target `midi` moved by the tempered interval between them. */
function referenceCents(instrument: Instrument, midi: number, semitones: number): number {
  return centsBetween(targetHz(midi, instrument.reference), instrument.fundamentalHz) - 100 * semitones
}
