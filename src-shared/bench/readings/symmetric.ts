/** Eigenvalues of a symmetric matrix and its orthonormal eigenvectors: `vectors[k]` belongs to `values[k]`. */
export interface Eigen {
  readonly values: readonly number[]
  readonly vectors: readonly (readonly number[])[]
}

/** Sweeps of rotations at most; a matrix of a hundred rows needs about ten. */
const mostSweeps = 100

/**
 * Eigenvalues and eigenvectors of a small symmetric matrix by Jacobi's cyclic rotations (Golub and Van Loan,
 * Matrix Computations, section 8.5), in no particular order. The matrix must be symmetric.
 *
 * @example eigen([[2, 1], [1, 2]]).values // 1 and 3
 */
export function eigen(matrix: readonly (readonly number[])[]): Eigen {
  const a = matrix.map((row) => [...row])
  const vectors = a.map((_, i) => a.map((__, j) => Number(i === j)))
  const size = a.length
  for (let sweep = 0; sweep < mostSweeps && !isDiagonal(a); sweep += 1)
    for (let p = 0; p < size - 1; p += 1) for (let q = p + 1; q < size; q += 1) rotate(a, vectors, p, q)
  return { values: a.map((row, i) => row[i]!), vectors }
}

/** Whether anything off the diagonal still matters beside the matrix as a whole. */
function isDiagonal(a: readonly (readonly number[])[]): boolean {
  const size = Math.hypot(...a.map((row) => Math.hypot(...row)))
  return a.every((row, i) => row.every((value, j) => i === j || Math.abs(value) <= 1e-16 * size))
}

/** One rotation in the plane of p and q that makes their element nothing; the vectors turn with it. */
function rotate(a: number[][], vectors: number[][], p: number, q: number): void {
  const apq = a[p]![q]!
  if (apq === 0) return
  const theta = (a[q]![q]! - a[p]![p]!) / (2 * apq)
  const t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.hypot(theta, 1))
  const c = 1 / Math.hypot(t, 1)
  const s = t * c
  for (const row of a) turnPair(row, p, q, c, s)
  turnRows(a[p]!, a[q]!, c, s)
  a[p]![q] = 0
  a[q]![p] = 0
  turnRows(vectors[p]!, vectors[q]!, c, s)
}

function turnPair(row: number[], p: number, q: number, c: number, s: number): void {
  const x = row[p]!
  const y = row[q]!
  row[p] = c * x - s * y
  row[q] = s * x + c * y
}

/** In place: this is where the time of a large table of readings goes. */
function turnRows(first: number[], second: number[], c: number, s: number): void {
  for (let j = 0; j < first.length; j++) {
    const x = first[j]!
    const y = second[j]!
    first[j] = c * x - s * y
    second[j] = s * x + c * y
  }
}
