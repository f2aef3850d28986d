import { eigen } from './symmetric.ts'

/** The answer of a linear least-squares problem that may not determine all of its unknowns. */
export interface LeastSquares {
  /** Of the solutions that fit equally well, the one with the least change in scaled unknowns. */
  readonly solution: readonly number[]
  /** Covariance for residuals of variance 1; what is not determined has no meaning here. */
  readonly covariance: readonly (readonly number[])[]
  /** Projection onto what is not determined, in scaled unknowns: all 0 when everything is. */
  readonly undetermined: readonly (readonly number[])[]
  readonly rank: number
}

/** Below this share of the largest, an eigenvalue of the scaled normal matrix is taken as none. */
const rankTolerance = 1e-10

/**
 * Solves `rows · x ≈ values` with the least sum of squares. Columns are scaled to length 1 first, so units do not
 * matter; the rank is told from the eigenvalues of the normal matrix. Rows are all as long as there are unknowns.
 *
 * @example leastSquares([[1, 0], [1, 1]], [3, 5]).solution // [3, 2]
 */
export function leastSquares(rows: readonly (readonly number[])[], values: readonly number[]): LeastSquares {
  const count = rows[0]?.length ?? 0
  const scales = indices(count).map((j) => Math.hypot(...rows.map((row) => row[j]!)) || 1)
  const scaled = rows.map((row) => row.map((value, j) => value / scales[j]!))
  const parts = eigen(normalMatrix(scaled, count))
  const largest = Math.max(0, ...parts.values)
  const pairs = parts.values.map((value, k) => ({ value, vector: parts.vectors[k]! }))
  const kept = pairs.filter(({ value }) => value > rankTolerance * largest)
  const lost = pairs.filter((pair) => !kept.includes(pair))
  const inverse = outerSum(kept, count, (value) => 1 / value)
  const right = indices(count).map((j) =>
    dot(
      scaled.map((row) => row[j]!),
      values,
    ),
  )
  return {
    solution: inverse.map((row, j) => dot(row, right) / scales[j]!),
    covariance: inverse.map((row, i) => row.map((value, j) => value / (scales[i]! * scales[j]!))),
    undetermined: outerSum(lost, count, () => 1),
    rank: kept.length,
  }
}

/** Sum of products of two rows of equal length. */
export function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * b[i]!, 0)
}

/** 0, 1, … below `count`. */
function indices(count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => i)
}

function normalMatrix(rows: readonly (readonly number[])[], count: number): number[][] {
  return indices(count).map((i) =>
    indices(count).map((j) => rows.reduce((sum, row) => sum + row[i]! * row[j]!, 0)),
  )
}

/** Sum of `weight(value) · vector vectorᵀ`. */
function outerSum(
  pairs: readonly { readonly value: number; readonly vector: readonly number[] }[],
  count: number,
  weight: (value: number) => number,
): number[][] {
  return indices(count).map((i) =>
    indices(count).map((j) =>
      pairs.reduce((sum, { value, vector }) => sum + weight(value) * vector[i]! * vector[j]!, 0),
    ),
  )
}
