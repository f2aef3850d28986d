/**
 * The lower factor `L` of a symmetric positive definite matrix, `L·Lᵀ = matrix`, row by row in one array of
 * `size²`; `null` when the matrix is not positive definite as far as doubles can tell.
 *
 * @example cholesky(new Float64Array([4, 2, 2, 5]), 2) // [2, 0, 1, 2]
 */
export function cholesky(matrix: Float64Array, size: number): Float64Array | null {
  const factor = new Float64Array(size * size)
  for (let row = 0; row < size; row++) {
    for (let column = 0; column <= row; column++) {
      let sum = matrix[row * size + column]!
      for (let at = 0; at < column; at++) sum -= factor[row * size + at]! * factor[column * size + at]!
      if (row !== column) factor[row * size + column] = sum / factor[column * size + column]!
      else if (sum > 0) factor[row * size + row] = Math.sqrt(sum)
      else return null
    }
  }
  return factor
}

/**
 * The inverse of a lower factor, transposed: the upper triangular `J` with `Jᵀ·matrix·J = 1`, row by row.
 *
 * @example inverseTranspose(new Float64Array([2, 0, 1, 2]), 2) // [0.5, -0.25, 0, 0.5]
 */
export function inverseTranspose(factor: Float64Array, size: number): Float64Array {
  const inverse = new Float64Array(size * size)
  for (let column = 0; column < size; column++) {
    for (let row = column; row < size; row++) {
      let sum = row === column ? 1 : 0
      for (let at = column; at < row; at++) sum -= factor[row * size + at]! * inverse[column * size + at]!
      inverse[column * size + row] = sum / factor[row * size + row]!
    }
  }
  return inverse
}
