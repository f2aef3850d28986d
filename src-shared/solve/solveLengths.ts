import { largestAt, leastLargest } from './leastLargest.ts'
import { leastSquares } from './leastSquares.ts'
import { type HoldingBound, type LengthAnswer, lengthsAndErrors, weightOf } from './lengthAnswer.ts'
import type { LengthProblem } from './lengthProblem.ts'
import type { LinearProgrammer } from './linearProgrammer.ts'
import { capHalfSpaces, endHalfSpaces } from './modelHalfSpaces.ts'
import { type PreparedProblem, prepareProblem, vanishingRoutes } from './prepareProblem.ts'
import { undeterminedColumns } from './undetermined.ts'
import { squaresAt } from './weightedSquares.ts'

/** Room above the least largest error, cents, in which the least rms is then sought; the second stage needs some. */
export const capRoomCents = 1e-6
/** A first cap farther out than this, cents, is no help to the linear programs. */
export const widestFirstCap = 600
/** A bound nearer than this, mm, holds; so does any that pulls. */
const touchingMm = 1e-6
const pulling = 1e-6

/**
 * Lengths with the least weighted mean square error, or the least largest weighted error.
 *
 * Where several sets of lengths share the least largest error, the one of least weighted mean square among them
 * is given (to within a millionth of a cent of the largest); loops that no counted row determines stay nearest to
 * where they stand. So the same question has one answer, and asking again from that answer moves nothing.
 *
 * @example solveLengths(problem, await loadHighs())
 */
export function solveLengths(problem: LengthProblem, programmer: LinearProgrammer): LengthAnswer {
  const prepared = prepareProblem(problem)
  if ('refusals' in prepared) return { status: 'refused', refusals: prepared.refusals }
  return problem.objective === 'rms' ? solveRms(prepared) : solveLargest(prepared, programmer)
}

/**
 * The same for a prepared problem and the mean square; needs no linear programs.
 *
 * @example solveRms(prepared).status
 */
export function solveRms(prepared: PreparedProblem): LengthAnswer {
  const ends = endHalfSpaces(prepared.model)
  const least = leastSquares(prepared.model, prepared.start, ends)
  if (least.kind === 'infeasible') throw new Error('Bounds that were checked cannot contradict each other.')
  const perCents = weightOf(prepared) * rmsAt(prepared, least.point)
  const pulls = new Float64Array(prepared.model.columns.length)
  for (const [at, end] of ends.entries()) {
    const pull = perCents > 0 ? least.multipliers[at]! / perCents : 0
    pulls[end.column]! += end.sign * pull
  }
  return answer(prepared, 'rms', least.kind, least.point, pulls)
}

/**
 * The same for a prepared problem and the largest error.
 *
 * @example solveLargest(prepared, programmer).status
 */
export function solveLargest(prepared: PreparedProblem, programmer: LinearProgrammer): LengthAnswer {
  const { model, start } = prepared
  const ends = endHalfSpaces(model)
  const first = leastSquares(model, start, ends)
  if (first.kind === 'infeasible') throw new Error('Bounds that were checked cannot contradict each other.')
  const least = leastLargest(model, Math.min(largestAt(model, first.point), widestFirstCap), programmer)
  if (least.kind === 'failed') return { status: 'programFailed', reason: least.reason }
  if (least.kind === 'stopped') return answer(prepared, 'largest', 'stopped', first.point, [])
  const caps = capHalfSpaces(model, least.largestCents + capRoomCents)
  const second = leastSquares(model, first.point, [...ends, ...caps])
  if (second.kind === 'infeasible')
    return { status: 'programFailed', reason: 'no lengths at the least largest error' }
  return answer(prepared, 'largest', second.kind, second.point, least.columnPulls)
}

function rmsAt(prepared: PreparedProblem, point: Float64Array): number {
  return Math.sqrt((2 * squaresAt(prepared.model, point)) / weightOf(prepared))
}

/** `pulls`: change of the objective, cents, as the end holding a column moves up by a unit; positive at the lowest. */
function answer(
  prepared: PreparedProblem,
  objective: LengthProblem['objective'],
  status: 'converged' | 'stopped',
  point: Float64Array,
  pulls: ArrayLike<number>,
): LengthAnswer {
  const vanishing = vanishingRoutes(prepared.model, point)
  if (vanishing.length > 0) return { status: 'refused', refusals: vanishing }
  const found = lengthsAndErrors(prepared, point)
  return {
    status,
    objective,
    objectiveCents: objective === 'rms' ? found.rmsCents : found.largestWeightedCents,
    ...found,
    heldByBounds: prepared.model.columns.flatMap((_, at) =>
      holding(prepared, at, point[at]!, pulls[at] ?? 0),
    ),
    undetermined: undeterminedColumns(prepared.model).flatMap(
      (at) => prepared.model.columns[at]!.rootId ?? [],
    ),
  }
}

function holding(
  prepared: PreparedProblem,
  at: number,
  value: number,
  pull: number,
): readonly HoldingBound[] {
  const { columns, unitMm } = prepared.model
  return (['lowest', 'highest'] as const).flatMap((bound) => {
    const end = columns[at]![bound]
    const inwards = bound === 'lowest' ? pull : -pull
    const touches = Math.abs(value - end.at) * unitMm * end.factor <= touchingMm
    if (!touches && inwards <= pulling) return []
    const gainCentsPerMm = Math.max(0, inwards) / (unitMm * end.factor)
    return [{ loop: end.loopId, bound, atMm: end.atMm, gainCentsPerMm }]
  })
}
