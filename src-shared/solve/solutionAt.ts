import {
  type HoldingBound,
  type LengthAnswer,
  type LengthSolution,
  lengthsAndErrors,
} from './lengthAnswer.ts'
import type { LengthObjective } from './lengthProblem.ts'
import { type PreparedProblem, vanishingRoutes } from './prepareProblem.ts'
import { undeterminedColumns } from './undetermined.ts'

/** A bound nearer than this, mm, holds; so does any that pulls. */
const touchingMm = 1e-6
const pulling = 1e-6

/**
 * The answer at a point that was found.
 *
 * @param pulls change of the objective, cents, as the end that holds a column moves up by a unit; positive at the lowest
 * @example solutionAt(prepared, 'rms', 'converged', point, pulls)
 */
export function solutionAt(
  prepared: PreparedProblem,
  objective: LengthObjective,
  status: LengthSolution['status'],
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
