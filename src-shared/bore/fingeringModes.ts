import { centsBetween, ratioOfSemitones } from '../pitch/cents.ts'
import type { Loop } from '../valves/loop.ts'
import type { Body } from './body.ts'
import { type GroupLength, groupLengths } from './groupLength.ts'
import { type Mode, numberModes } from './numberModes.ts'
import { accepted, type BoreResult } from './refusal.ts'
import { type ResonanceStatus, resonancesOf } from './resonances.ts'
import type { Insert } from './section.ts'

/** A fingering as the acoustic bore needs it. */
export interface BoreFingering {
  /** `0`, `1-2` and so on. */
  readonly fingering: string
  /** Nominal drop from the open route. */
  readonly semitones: number
  /** Its loops, in their order. */
  readonly inserts: readonly Insert[]
  /** Length of its route by the length model, mm. */
  readonly routeLengthMm: number
}

/** What both models say of one mode of one fingering. */
export interface FingeredMode extends Mode {
  /** The open route's mode of the same number lowered by the fingering's drop. */
  readonly targetHz: number | null
  readonly errorCents: number | null
  /** The open route's mode lowered by the ratio of the lengths: what the length model says. */
  readonly lengthModelHz: number | null
  readonly lengthModelErrorCents: number | null
  /** The bore's figure less the length model's. */
  readonly differenceCents: number | null
  readonly groupLength: GroupLength
}

/** One fingering's resonances beside the length model's. */
export interface FingeringModes {
  readonly fingering: string
  readonly status: ResonanceStatus
  readonly nominalFundamentalHz: number | null
  readonly modes: readonly FingeredMode[]
}

/**
 * The loops of a route as inserts; a loop without a diameter of its own has the valves', one
 * without a bend's radius is straight.
 *
 * @example insertsOfLoops([{ id: 'L1', lengthMm: 169.5, pressed: ['1'] }], 11.66)
 */
export function insertsOfLoops(
  loopsInRoute: readonly Pick<Loop, 'lengthMm' | 'diameterMm' | 'bendRadiusMm'>[],
  valvesDiameterMm: number,
): Insert[] {
  return loopsInRoute.map(({ lengthMm, diameterMm, bendRadiusMm }) => ({
    lengthMm,
    diameterMm: diameterMm ?? valvesDiameterMm,
    ...(bendRadiusMm === undefined ? {} : { bendRadiusMm }),
  }))
}

/**
 * The modes of every fingering, each against its target and beside what the length model says. Both are taken as
 * intervals from `open`, where the two models' different airs and the bell cancel. A mode that the open route lacks has
 * `null` for its target. The first loop that is refused is the answer.
 *
 * @example describeFingerings(body, open, [open, first, second])
 */
export function describeFingerings(
  body: Body,
  open: BoreFingering,
  fingerings: readonly BoreFingering[],
): BoreResult<readonly FingeringModes[]> {
  const openResonances = resonancesOf(body, open.inserts)
  if (!openResonances.ok) return openResonances
  const openHz = openResonances.value.peaks.map(({ hz }) => hz)
  const described: FingeringModes[] = []
  for (const fingering of fingerings) {
    const one = describeOne(body, open, openHz, fingering)
    if (!one.ok) return one
    described.push(one.value)
  }
  return accepted(described)
}

function describeOne(
  body: Body,
  open: BoreFingering,
  openHz: readonly number[],
  fingering: BoreFingering,
): BoreResult<FingeringModes> {
  const found = resonancesOf(body, fingering.inserts)
  if (!found.ok) return found
  const lengths = groupLengths(
    body,
    fingering.inserts,
    found.value.peaks.map(({ hz }) => hz),
  )
  if (!lengths.ok) return lengths
  const { nominalFundamentalHz, modes } = numberModes(found.value.peaks)
  return accepted({
    fingering: fingering.fingering,
    status: found.value.status,
    nominalFundamentalHz,
    modes: modes.map((mode, i) => ({
      ...mode,
      ...againstOpen(mode.hz, openHz[i], open.routeLengthMm, fingering),
      groupLength: lengths.value[i]!,
    })),
  })
}

function againstOpen(hz: number, openHz: number | undefined, openLengthMm: number, fingering: BoreFingering) {
  if (openHz === undefined)
    return {
      targetHz: null,
      errorCents: null,
      lengthModelHz: null,
      lengthModelErrorCents: null,
      differenceCents: null,
    }
  const targetHz = openHz / ratioOfSemitones(fingering.semitones)
  const lengthModelHz = (openHz * openLengthMm) / fingering.routeLengthMm
  return {
    targetHz,
    errorCents: centsBetween(targetHz, hz),
    lengthModelHz,
    lengthModelErrorCents: centsBetween(targetHz, lengthModelHz),
    differenceCents: centsBetween(lengthModelHz, hz),
  }
}
