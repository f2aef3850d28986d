import { largestAt, leastLargest } from './leastLargest.ts'
import { leastSquares } from './leastSquares.ts'
import { type LengthAnswer, weightOf } from './lengthAnswer.ts'
import type { LengthProblem } from './lengthProblem.ts'
import type { LinearProgrammer } from './linearProgrammer.ts'
import { capHalfSpaces, endHalfSpaces } from './modelHalfSpaces.ts'
import { type PreparedProblem, prepareProblem } from './prepareProblem.ts'
import { solutionAt } from './solutionAt.ts'
import { squaresAt } from './weightedSquares.ts'

/** Room above the least largest error, cents, in which the least rms is then sought; the second stage needs some. */
export const capRoomCents = 1e-6
/** A first cap farther out than this, cents, is no help to the linear programs. */
export const widestFirstCap = 600

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
  const { kind, point, pulls } = pointOfLeastRms(prepared)
  return solutionAt(prepared, 'rms', kind, point, pulls)
}

/**
 * The same for a prepared problem and the largest error.
 *
 * @example solveLargest(prepared, programmer).status
 */
export function solveLargest(prepared: PreparedProblem, programmer: LinearProgrammer): LengthAnswer {
  const found = pointOfLeastLargest(prepared, programmer)
  if (found.kind === 'failed') return { status: 'programFailed', reason: found.reason }
  return solutionAt(prepared, 'largest', found.kind, found.point, found.pulls)
}

/** A point of the model that was found, and how hard each column's end pulls there, cents a unit. */
export interface FoundPoint {
  readonly kind: 'converged' | 'stopped'
  readonly point: Float64Array
  readonly pulls: ArrayLike<number>
}

/**
 * The point of a prepared problem's model with the least weighted mean square.
 *
 * @example pointOfLeastRms(prepared).point
 */
export function pointOfLeastRms(prepared: PreparedProblem): FoundPoint {
  const ends = endHalfSpaces(prepared.model)
  const least = leastSquares(prepared.model, prepared.start, ends)
  if (least.kind === 'infeasible') throw new Error('Bounds that were checked cannot contradict each other.')
  const perCents = weightOf(prepared) * rmsAt(prepared, least.point)
  const pulls = new Float64Array(prepared.model.columns.length)
  for (const [at, end] of ends.entries()) {
    const pull = perCents > 0 ? least.multipliers[at]! / perCents : 0
    pulls[end.column]! += end.sign * pull
  }
  return { kind: least.kind, point: least.point, pulls }
}

/**
 * The point of a prepared problem's model with the least largest weighted error, and of least weighted mean square among
 * those.
 *
 * @example pointOfLeastLargest(prepared, programmer).kind
 */
export function pointOfLeastLargest(
  { model, start }: PreparedProblem,
  programmer: LinearProgrammer,
): FoundPoint | { readonly kind: 'failed'; readonly reason: string } {
  const ends = endHalfSpaces(model)
  const first = leastSquares(model, start, ends)
  if (first.kind === 'infeasible') throw new Error('Bounds that were checked cannot contradict each other.')
  const least = leastLargest(model, Math.min(largestAt(model, first.point), widestFirstCap), programmer)
  if (least.kind === 'failed') return least
  if (least.kind === 'stopped') return { kind: 'stopped', point: first.point, pulls: [] }
  const caps = capHalfSpaces(model, least.largestCents + capRoomCents)
  const second = leastSquares(model, first.point, [...ends, ...caps])
  if (second.kind === 'infeasible') return { kind: 'failed', reason: 'no lengths at the least largest error' }
  return { kind: second.kind, point: second.point, pulls: least.columnPulls }
}

/**
 * Root of the weighted mean square at a point, cents.
 *
 * @example rmsAt(prepared, prepared.start)
 */
export function rmsAt(prepared: PreparedProblem, point: ArrayLike<number>): number {
  return Math.sqrt((2 * squaresAt(prepared.model, point)) / weightOf(prepared))
}
