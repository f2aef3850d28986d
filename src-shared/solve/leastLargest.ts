import type { LinearProgram, LinearProgrammer } from './linearProgrammer.ts'
import { leftAt, naturalCents, type RouteModel, routeAt } from './routeModel.ts'

/** The least largest weighted error, and how fast it changes with the end that holds each column (a unit of it). */
export type LeastLargest =
  | { readonly kind: 'converged'; readonly largestCents: number; readonly columnPulls: ArrayLike<number> }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed'; readonly reason: string }

const mostPrograms = 40
/** Cents; a cap that moves less is found. */
const stillness = 1e-8
/** A row of small weight is linearised no farther out than this, cents, where it can no longer hold anything. */
const farthest = 3 * naturalCents

/**
 * Least largest weighted error by linear programs. For a given cap on the error the lengths allowed are bounded
 * by straight lines (`capHalfSpaces`), so only the cap is linearised: each program finds the cap by Newton's
 * step, with the lengths exact, and three or four settle it quadratically from a good `firstCap`; halving
 * an interval would take forty for the same figures. Sets of lengths allowed by a smaller cap lie within those
 * of a larger one, so the cap found is the least of all.
 *
 * @example leastLargest(model, 20, programmer)
 */
export function leastLargest(
  model: RouteModel,
  firstCap: number,
  programmer: LinearProgrammer,
): LeastLargest {
  let cap = firstCap
  for (let count = 0; count < mostPrograms; count++) {
    const answer = programmer.solve(linearised(model, cap))
    if (answer.kind !== 'optimal') {
      return { kind: 'failed', reason: answer.kind === 'failed' ? answer.reason : answer.kind }
    }
    const next = answer.columnValues[model.columns.length]!
    if (Math.abs(next - cap) <= stillness * (1 + cap)) {
      return { kind: 'converged', largestCents: next, columnPulls: answer.columnPulls }
    }
    cap = next
  }
  return { kind: 'stopped' }
}

/**
 * The largest weighted error at a point, cents, after what movable slides can do.
 *
 * @example largestAt(model, point)
 */
export function largestAt(model: RouteModel, point: ArrayLike<number>): number {
  let largest = 0
  for (const row of model.rows) {
    if (row.weight > 0) {
      largest = Math.max(largest, row.weight * Math.abs(leftAt(row, routeAt(row, point)).cents))
    }
  }
  return largest
}

/** Columns of the model, then the cap, which is what is made least; two rows for each counted row. */
function linearised(model: RouteModel, cap: number): LinearProgram {
  const capColumn = model.columns.length
  const rowLower: number[] = []
  const rowStarts = [0]
  const columnIndices: number[] = []
  const values: number[] = []
  const addRow = (row: RouteModel['rows'][number], sign: 1 | -1, perCap: number, least: number) => {
    const scale = (sign * naturalCents) / row.target
    columnIndices.push(...row.columns, capColumn)
    for (const coefficient of row.coefficients) values.push(coefficient * scale)
    values.push(perCap)
    rowStarts.push(values.length)
    rowLower.push(least)
  }
  for (const row of model.rows) {
    if (row.weight === 0) continue
    const weightedCap = Math.min(cap / row.weight, farthest)
    const ratio = Math.exp(weightedCap / naturalCents)
    const scale = naturalCents / row.target
    const sharpest = (naturalCents + weightedCap) / ratio - (row.constant + row.tubeOut) * scale
    const flattest = (weightedCap - naturalCents) * ratio + (row.constant - row.tubeIn) * scale
    addRow(row, 1, 1 / ratio / row.weight, sharpest)
    addRow(row, -1, ratio / row.weight, flattest)
  }
  return {
    columnCosts: [...model.columns.map(() => 0), 1],
    columnLower: [...model.columns.map((column) => column.lowest.at), 0],
    columnUpper: [...model.columns.map((column) => column.highest.at), Number.POSITIVE_INFINITY],
    rowLower,
    rowUpper: rowLower.map(() => Number.POSITIVE_INFINITY),
    rowStarts,
    columnIndices,
    values,
  }
}
