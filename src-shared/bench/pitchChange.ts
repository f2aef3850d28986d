import { centsBetween, ratioOfSemitones } from '../pitch/cents.ts'
import { type Fingering, fingeringName } from '../valves/fingering.ts'
import { liesInRouteOf } from '../valves/gate.ts'
import type { Loop } from '../valves/loop.ts'
import { sumOfDrops } from '../valves/nominalDrop.ts'
import { tubeInRouteMm } from '../valves/route.ts'
import type { Valve } from '../valves/valve.ts'

/** An instrument to be taken from one pitch to another. Lengths in mm of tube. */
export interface PitchChange {
  /** What the instrument plays now and what it shall play: A4, or any note of it, Hz; above 0. */
  readonly fromHz: number
  readonly toHz: number
  /** The open route's length at the old pitch. */
  readonly openLengthMm: number
  readonly valves: readonly Valve[]
  readonly loops: readonly Loop[]
  /** For which the errors are wanted; usually every combination of the valves. */
  readonly fingerings: readonly Fingering[]
}

/** Tube to add and the same in each of two legs, mm; negative is to take off. A slide's movement is the leg's. */
export interface TubeChange {
  readonly tubeMm: number
  readonly perLegMm: number
}

/** What a change of pitch asks for. */
export interface PitchChangeAnswer {
  /** New length over old. */
  readonly ratio: number
  /** The interval that the instrument moves by; negative is down. */
  readonly cents: number
  /** The whole open route's, and so with what the loops in {@link PitchChangeAnswer.loopsInBody} take. */
  readonly body: TubeChange
  /** By loop id, compensating loops too. */
  readonly loops: Readonly<Record<string, TubeChange>>
  /** Ids of the loops that lie in the open route, in their order: their change is part of the body's already. */
  readonly loopsInBody: readonly string[]
  /** What is left of the body's change for the body without those loops. */
  readonly bodyItself: TubeChange
  /** Errors with the open route at the new pitch and every loop left as it is, by fingering. */
  readonly ifOnlyBodyErrorsCents: Readonly<Record<string, number>>
  /** The same fingerings before the change, to tell what it costs. */
  readonly beforeErrorsCents: Readonly<Record<string, number>>
}

/**
 * What tube each part needs for a change of pitch: every acoustic length times `fromHz / toHz`, so the body
 * takes `(q − 1)·L` and each loop `(q − 1)·loop`. L holds the loops that lie in the open route, so what they take
 * is part of the body's and is not to be added to it. Frequencies and lengths that are not above 0 throw.
 *
 * @example changePitch({ fromHz: 452.5, toHz: 440, openLengthMm: 1400, … }).body.tubeMm // 39.77
 */
export function changePitch(change: PitchChange): PitchChangeAnswer {
  const { fromHz, toHz, openLengthMm, loops } = change
  for (const value of [fromHz, toHz, openLengthMm])
    if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`Expected a value above 0, not ${value}`)
  const ratio = fromHz / toHz
  const inBody = loops.filter((loop) => liesInRouteOf(loop, []))
  const inBodyMm = inBody.reduce((sum, { lengthMm }) => sum + lengthMm, 0)
  return {
    ratio,
    cents: centsBetween(fromHz, toHz),
    body: tubeChange(ratio, openLengthMm),
    loops: Object.fromEntries(loops.map((loop) => [loop.id, tubeChange(ratio, loop.lengthMm)])),
    loopsInBody: inBody.map(({ id }) => id),
    bodyItself: tubeChange(ratio, openLengthMm - inBodyMm),
    ifOnlyBodyErrorsCents: errorsCents(change, openLengthMm * ratio),
    beforeErrorsCents: errorsCents(change, openLengthMm),
  }
}

/** The change's record as the headless command writes it, apart from its id: mm of tube, cents. */
export interface PitchChangeRecord {
  readonly bodyMm: number
  readonly loops: Readonly<Record<string, number>>
  /** Loops whose change is part of `bodyMm` already; absent where there is none. */
  readonly loopsInBody?: readonly string[]
  readonly ifOnlyBodyErrorsCents: Readonly<Record<string, number>>
}

/** The headless record of a change of pitch. */
export function pitchChangeRecord(answer: PitchChangeAnswer): PitchChangeRecord {
  const loops = Object.entries(answer.loops).map(([id, { tubeMm }]) => [id, tubeMm])
  return {
    bodyMm: answer.body.tubeMm,
    loops: Object.fromEntries(loops),
    ...(answer.loopsInBody.length === 0 ? {} : { loopsInBody: answer.loopsInBody }),
    ifOnlyBodyErrorsCents: answer.ifOnlyBodyErrorsCents,
  }
}

function tubeChange(ratio: number, lengthMm: number): TubeChange {
  const tubeMm = (ratio - 1) * lengthMm
  return { tubeMm, perLegMm: tubeMm / 2 }
}

/** Errors with the loops as they are and an open route of `openLengthMm`, which is taken as in tune. */
function errorsCents(
  { valves, loops, fingerings }: PitchChange,
  openLengthMm: number,
): Record<string, number> {
  const error = ({ pressed, semitones }: Fingering) => {
    const requiredMm = openLengthMm * ratioOfSemitones(semitones ?? sumOfDrops(pressedOf(valves, pressed)))
    return centsBetween(openLengthMm + tubeInRouteMm(loops, pressed), requiredMm)
  }
  return Object.fromEntries(
    fingerings.map((fingering) => [fingeringName(fingering.pressed), error(fingering)]),
  )
}

/** The valves pressed together. One that does not exist throws. */
function pressedOf(valves: readonly Valve[], pressed: readonly string[]): readonly Valve[] {
  return pressed.map((id) => {
    const valve = valves.find((candidate) => candidate.id === id)
    if (valve === undefined) throw new RangeError(`No valve ${id}`)
    return valve
  })
}
