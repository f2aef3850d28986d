import { largestAt } from './leastLargest.ts'
import type { LengthObjective } from './lengthProblem.ts'
import type { LengthRefusal } from './lengthRefusal.ts'
import type { PreparedProblem } from './prepareProblem.ts'
import { leftAt, naturalCents, routeAt } from './routeModel.ts'
import { trialAt } from './trialAt.ts'
import { squaresAt } from './weightedSquares.ts'

/** Lengths, and what every row does with them. Rows in the problem's order, those of weight 0 included. */
export interface LengthsAndErrors {
  /** Of every loop, held and tied ones too. */
  readonly lengthsMm: Readonly<Record<string, number>>
  /** From the nominal open length. */
  readonly openChangeMm: number
  readonly rows: readonly RowOutcome[]
  /** Root of the weighted mean square of what is left of the errors. */
  readonly rmsCents: number
  /** Size of the largest of what is left of the counted errors, weights apart: 0 or more, sharp and flat alike. */
  readonly largestCents: number
  /** Largest of weight times that. */
  readonly largestWeightedCents: number
}

/** One row's part in the answer. */
export interface RowOutcome {
  readonly name: string
  readonly weight: number
  readonly routeLengthMm: number
  /** Length at which the row has no error, its offset taken in. */
  readonly targetLengthMm: number
  readonly errorCents: number
  /** What movable slides leave of it; the error itself where none can be moved. */
  readonly leftCents: number
  /** Its weighted error equals the largest: it holds the largest where it is. */
  readonly holdsLargest: boolean
  /** Of a row whose errors come from another model: what its figures are the weighted mean of. */
  readonly notes?: readonly NoteOutcome[]
}

/** One note of a row (a mode of a fingering, say), where another model than that of lengths has several. */
export interface NoteOutcome {
  readonly name: string
  /** Among the notes of its row. */
  readonly weight: number
  readonly leftCents: number
  readonly holdsLargest: boolean
}

/** A bound that holds the answer, and how much the objective would gain were it moved a millimetre outwards. */
export interface HoldingBound {
  /** `null` for the open route. */
  readonly loop: string | null
  readonly bound: 'lowest' | 'highest'
  readonly atMm: number
  /** Cents of the objective a millimetre, for a small movement. */
  readonly gainCentsPerMm: number
}

/** A proposal. `stopped` means that the search ran out of steps: the best found is given, and may not be the best. */
export interface LengthSolution extends LengthsAndErrors {
  readonly status: 'converged' | 'stopped'
  readonly objective: LengthObjective
  /** `rmsCents` or `largestWeightedCents`, whichever was made least. */
  readonly objectiveCents: number
  readonly heldByBounds: readonly HoldingBound[]
  /** Free loops that the counted rows do not determine, left where they were as nearly as may be. */
  readonly undetermined: readonly string[]
}

/** What the solver answers: a proposal, or plainly why there is none. */
export type LengthAnswer =
  | LengthSolution
  | { readonly status: 'refused'; readonly refusals: readonly LengthRefusal[] }
  | { readonly status: 'programFailed'; readonly reason: string }

/** Weighted errors this near to the largest, cents, equal it; the largest is held to a millionth. */
const equalWithin = 1e-4

/**
 * Lengths and errors at a point of the model. The routes there must be above 0.
 *
 * @example lengthsAndErrors(prepared, prepared.start).rmsCents
 */
export function lengthsAndErrors(prepared: PreparedProblem, point: ArrayLike<number>): LengthsAndErrors {
  const { model } = prepared
  const largestWeightedCents = largestAt(model, point)
  const rows = model.rows.map((row) => outcome(row, point, model.unitMm, largestWeightedCents))
  return {
    ...trialAt(prepared, point),
    rows,
    rmsCents: Math.sqrt((2 * squaresAt(model, point)) / weightOf(prepared)),
    largestCents: Math.max(...rows.map((row) => (row.weight > 0 ? Math.abs(row.leftCents) : 0))),
    largestWeightedCents,
  }
}

/**
 * Sum of the rows' weights.
 *
 * @example weightOf(prepared) // 7 for seven fingerings of weight 1
 */
export function weightOf({ model }: PreparedProblem): number {
  return model.rows.reduce((sum, row) => sum + row.weight, 0)
}

function outcome(
  row: PreparedProblem['model']['rows'][number],
  point: ArrayLike<number>,
  unitMm: number,
  largestWeightedCents: number,
): RowOutcome {
  const route = routeAt(row, point)
  const leftCents = leftAt(row, route).cents
  return {
    name: row.name,
    weight: row.weight,
    routeLengthMm: route * unitMm,
    targetLengthMm: row.target * unitMm,
    errorCents: naturalCents * Math.log(row.target / route),
    leftCents,
    holdsLargest: row.weight > 0 && row.weight * Math.abs(leftCents) >= largestWeightedCents - equalWithin,
  }
}
