import { type Body, prepareBody } from '../bore/body.ts'
import { accepted, type BoreResult, refused } from '../bore/refusal.ts'
import { resonancesOf } from '../bore/resonances.ts'
import type { Insert } from '../bore/section.ts'
import { centsBetween, ratioOfSemitones } from '../pitch/cents.ts'
import type { LengthProblem, SolverRow } from '../solve/lengthProblem.ts'
import { refusal } from '../solve/lengthRefusal.ts'
import type { SoundedNote, Sounding, TrialLengths } from '../solve/sounding.ts'
import { type BoreInput, type BoreLoop, valvesDiameterMm } from './boreInput.ts'
import { modesWithTube } from './modesWithTube.ts'

/** Half of the change of length over which a slope is taken, mm: far above a peak's own error, far below its bend. */
const armMm = 5

interface Aim {
  readonly mode: number
  readonly weight: number
  /** The open route's mode in tune. */
  readonly openHz: number
}

interface Surroundings {
  readonly body: Body
  readonly aims: readonly Aim[]
  readonly problem: LengthProblem
  readonly loops: readonly BoreLoop[]
  readonly diameterMm: number
}

/**
 * A design's bore as the solver of lengths takes it: a note for each fingering and each mode that the bore aims at. Its
 * error is taken from the open route's mode of the same number with the lengths as the problem has them, lowered by the
 * fingering's drop, so that air and bell cancel. A change of the open route counts as tube of the valves' bore there, and
 * so does what loops in the open route lose, for the problem keeps that route as long as it was.
 *
 * A bore that cannot be reckoned is refused, and so is one without any of the modes aimed at.
 *
 * @example solveSounding(problem, boreSounding(input, problem).value, null)
 */
export function boreSounding(input: BoreInput, problem: LengthProblem): BoreResult<Sounding> {
  const targets = input.targets.filter(({ weight = 1 }) => weight > 0)
  const highestMode = Math.max(...targets.map(({ mode }) => mode))
  const body = prepareBody(input.sections, input.conditions, { highestMode })
  if (!body.ok) return body
  const open = resonancesOf(body.value, input.open.inserts)
  if (!open.ok) return open
  const aims = targets.flatMap(({ mode, weight = 1 }) => {
    const peak = open.value.peaks[mode - 1]
    return peak === undefined ? [] : [{ mode, weight, openHz: peak.hz }]
  })
  if (aims.length === 0) return refused('targets', 'no such mode', 'a mode that the open route has')
  const diameterMm = valvesDiameterMm(input)
  const around = { body: body.value, aims, problem, loops: input.loops, diameterMm }
  return accepted((trial) => soundAll(around, trial))
}

function soundAll(around: Surroundings, trial: TrialLengths): ReturnType<Sounding> {
  const notes: SoundedNote[] = []
  const changeMm = openChangeMm(around.problem, trial)
  for (const [at, row] of around.problem.rows.entries()) {
    const sounded = soundRow(around, trial, changeMm, row, at)
    if (!sounded.ok)
      return {
        refusal: refusal('notSounded', `rows[${at}].loops`, sounded.refusal.found, sounded.refusal.expected),
      }
    notes.push(...sounded.value)
  }
  return { notes }
}

function openChangeMm({ loops }: LengthProblem, trial: TrialLengths): number {
  return loops
    .filter(({ inOpenRoute }) => inOpenRoute ?? false)
    .reduce((sum, { id, lengthMm }) => sum - (trial.lengthsMm[id]! - lengthMm), trial.openChangeMm)
}

function soundRow(
  around: Surroundings,
  trial: TrialLengths,
  changeMm: number,
  row: SolverRow,
  at: number,
): BoreResult<readonly SoundedNote[]> {
  const own = around.loops.filter(({ id }) => row.loops.includes(id))
  const inserts = own.map(({ id, insert }) => ({ ...insert, lengthMm: trial.lengthsMm[id]! }))
  const errors = (tubes: readonly Insert[], extraMm: number) => errorsOf(around, row, tubes, extraMm)
  const cents = errors(inserts, changeMm)
  if (!cents.ok) return cents
  const ofOpen = slopesBetween(
    errors(inserts, changeMm - armMm),
    errors(inserts, changeMm + armMm),
    2 * armMm,
  )
  if (!ofOpen.ok) return ofOpen
  const alike = own.every(({ insert }) => insert.diameterMm === around.diameterMm)
  const slopes: (readonly [string | null, readonly (number | null)[]])[] = [[null, ofOpen.value]]
  for (const [i, { id }] of own.entries()) {
    if (isOpenLoop(around.problem, id)) continue
    const slope = alike ? ofOpen : slopeOfLoop(errors, inserts, i, changeMm)
    if (!slope.ok) return slope
    slopes.push([id, slope.value])
  }
  for (const { id, inOpenRoute = false } of around.problem.loops)
    if (inOpenRoute && !row.loops.includes(id)) slopes.push([id, ofOpen.value.map((each) => -(each ?? 0))])
  return accepted(notesOf(around.aims, at, cents.value, slopes))
}

const isOpenLoop = ({ loops }: LengthProblem, id: string): boolean =>
  loops.find((loop) => loop.id === id)?.inOpenRoute ?? false

type Cents = readonly (number | null)[]

function slopeOfLoop(
  errors: (tubes: readonly Insert[], extraMm: number) => BoreResult<Cents>,
  inserts: readonly Insert[],
  at: number,
  changeMm: number,
): BoreResult<Cents> {
  const insert = inserts[at]!
  const shorterMm = Math.min(armMm, insert.lengthMm)
  const changed = (byMm: number) =>
    errors(inserts.with(at, { ...insert, lengthMm: insert.lengthMm + byMm }), changeMm)
  return slopesBetween(changed(-shorterMm), changed(armMm), shorterMm + armMm)
}

function slopesBetween(low: BoreResult<Cents>, high: BoreResult<Cents>, apartMm: number): BoreResult<Cents> {
  if (!low.ok) return low
  if (!high.ok) return high
  return accepted(
    high.value.map((cents, i) => {
      const before = low.value[i] ?? null
      return cents === null || before === null ? null : (cents - before) / apartMm
    }),
  )
}

function notesOf(
  aims: readonly Aim[],
  row: number,
  cents: Cents,
  slopes: readonly (readonly [string | null, Cents])[],
): readonly SoundedNote[] {
  return aims.flatMap(({ mode, weight }, i) => {
    const error = cents[i] ?? null
    if (error === null || slopes.some(([, each]) => (each[i] ?? null) === null)) return []
    const centsPerMm = new Map(slopes.map(([id, each]) => [id, each[i]!]))
    return [{ row, name: `mode ${mode}`, weight, cents: error, centsPerMm }]
  })
}

/** Errors of the modes aimed at, cents; `null` for a mode that this route lacks. */
function errorsOf(
  { body, aims, diameterMm }: Surroundings,
  { semitones, offsetCents = 0 }: SolverRow,
  inserts: readonly Insert[],
  extraMm: number,
): BoreResult<Cents> {
  const found = modesWithTube(body, inserts, extraMm, diameterMm)
  if (!found.ok) return found
  return accepted(
    aims.map(({ mode, openHz }) => {
      const hz = found.value[mode - 1]
      return hz === undefined ? null : centsBetween(openHz / ratioOfSemitones(semitones), hz) + offsetCents
    }),
  )
}
