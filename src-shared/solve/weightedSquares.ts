import { leftAt, naturalCents, type RouteModel, routeAt } from './routeModel.ts'

/** Slope and curvature of `½·Σ weight·error²`, the curvature a full symmetric matrix row by row. */
export interface SquaresCurvature {
  readonly gradient: Float64Array
  readonly matrix: Float64Array
}

/** Least curvature of a row that counts, as a share of its Gauss-Newton curvature; keeps the matrix positive. */
const leastShare = 0.05
/** Share of the mean curvature that holds loops which no row determines where they are. */
const holdingShare = 1e-7

/**
 * `½·Σ weight·error²` at a point, in cents², errors being what movable slides leave of them. Infinite where a
 * counted route is not above 0.
 *
 * @example squaresAt(model, point)
 */
export function squaresAt(model: RouteModel, point: ArrayLike<number>): number {
  let sum = 0
  for (const row of model.rows) {
    if (row.weight > 0) sum += (row.weight / 2) * leftAt(row, routeAt(row, point)).cents ** 2
  }
  return Number.isNaN(sum) ? Number.POSITIVE_INFINITY : sum
}

/**
 * Whether every counted route is above 0 at a point.
 *
 * @example routesStayAbove(model, point) // true
 */
export function routesStayAbove(model: RouteModel, point: ArrayLike<number>): boolean {
  return model.rows.every((row) => row.weight === 0 || routeAt(row, point) > row.tubeIn)
}

/**
 * Slope and curvature of `squaresAt`. A row's second derivative is `weight·(1731/route)²·(1 + error/1731)`.
 *
 * @example squaresCurvature(model, point).gradient
 */
export function squaresCurvature(model: RouteModel, point: ArrayLike<number>): SquaresCurvature {
  const size = model.columns.length
  const gradient = new Float64Array(size)
  const matrix = new Float64Array(size * size)
  for (const row of model.rows) {
    if (row.weight === 0) continue
    const { cents, route } = leftAt(row, routeAt(row, point))
    if (cents === 0 && (row.tubeOut > 0 || row.tubeIn > 0)) continue
    const perUnit = naturalCents / route
    const bend = row.weight * perUnit ** 2 * Math.max(leastShare, 1 + cents / naturalCents)
    for (let at = 0; at < row.columns.length; at++) {
      const column = row.columns[at]!
      gradient[column]! -= row.weight * cents * perUnit * row.coefficients[at]!
      for (let other = 0; other <= at; other++) {
        addBoth(
          matrix,
          size,
          column,
          row.columns[other]!,
          bend * row.coefficients[at]! * row.coefficients[other]!,
        )
      }
    }
  }
  hold(matrix, size)
  return { gradient, matrix }
}

function addBoth(matrix: Float64Array, size: number, row: number, column: number, value: number): void {
  matrix[row * size + column]! += value
  if (row !== column) matrix[column * size + row]! += value
}

function hold(matrix: Float64Array, size: number): void {
  let trace = 0
  for (let at = 0; at < size; at++) trace += matrix[at * size + at]!
  const holding = trace > 0 ? (holdingShare * trace) / size : 1
  for (let at = 0; at < size; at++) matrix[at * size + at]! += holding
}
