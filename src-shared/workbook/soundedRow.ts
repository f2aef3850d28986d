import type { Body } from '../bore/body.ts'
import { accepted, type BoreResult } from '../bore/refusal.ts'
import type { Insert } from '../bore/section.ts'
import { centsBetween, ratioOfSemitones } from '../pitch/cents.ts'
import type { LengthProblem, SolverRow } from '../solve/lengthProblem.ts'
import type { SoundedNote, TrialLengths } from '../solve/sounding.ts'
import type { BoreLoop } from './boreInput.ts'
import { modesWithTube } from './modesWithTube.ts'

/** Half of the change of length over which a slope is taken, mm: far above a peak's own error, far below its bend. */
const armMm = 5

/** A mode that is aimed at. */
export interface Aim {
  readonly mode: number
  readonly weight: number
  /** The open route's mode in tune. */
  readonly openHz: number
}

/** A bore made ready for the fingerings of a problem. */
export interface HeardBore {
  readonly body: Body
  readonly aims: readonly Aim[]
  readonly problem: LengthProblem
  readonly loops: readonly BoreLoop[]
  readonly diameterMm: number
}

/**
 * The notes of one row at some lengths, with their slopes. Loops of the valves' bore share one slope, for they are one tube.
 *
 * @param changeMm tube of the valves' bore put in besides the loops, or taken out of them
 * @param at the row's place in the problem
 * @example soundRow(heard, trial, 0, problem.rows[1]!, 1)
 */
export function soundRow(
  heard: HeardBore,
  trial: TrialLengths,
  changeMm: number,
  row: SolverRow,
  at: number,
): BoreResult<readonly SoundedNote[]> {
  const own = heard.loops.filter(({ id }) => row.loops.includes(id))
  const inserts = own.map(({ id, insert }) => ({ ...insert, lengthMm: trial.lengthsMm[id]! }))
  const errors = (tubes: readonly Insert[], extraMm: number) => errorsOf(heard, row, tubes, extraMm)
  const cents = errors(inserts, changeMm)
  if (!cents.ok) return cents
  const ofOpen = slopesBetween(
    errors(inserts, changeMm - armMm),
    errors(inserts, changeMm + armMm),
    2 * armMm,
  )
  if (!ofOpen.ok) return ofOpen
  const alike = own.every(({ insert }) => insert.diameterMm === heard.diameterMm)
  const slopes: (readonly [string | null, readonly (number | null)[]])[] = [[null, ofOpen.value]]
  for (const [i, { id }] of own.entries()) {
    if (isOpenLoop(heard.problem, id)) continue
    const slope = alike ? ofOpen : slopeOfLoop(errors, inserts, i, changeMm)
    if (!slope.ok) return slope
    slopes.push([id, slope.value])
  }
  for (const { id, inOpenRoute = false } of heard.problem.loops)
    if (inOpenRoute && !row.loops.includes(id)) slopes.push([id, ofOpen.value.map((each) => -(each ?? 0))])
  return accepted(notesOf(heard.aims, at, cents.value, slopes))
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
  { body, aims, diameterMm }: HeardBore,
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
