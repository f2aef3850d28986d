/** A turn of two values onto the first; `length` is what the first becomes. */
export interface Turn {
  readonly cosine: number
  readonly sine: number
  readonly length: number
}

/**
 * The turn that brings `(first, second)` to `(length, 0)`; none when both are 0.
 *
 * @example givens(3, 4) // { cosine: 0.6, sine: 0.8, length: 5 }
 */
export function givens(first: number, second: number): Turn {
  const length = Math.hypot(first, second)
  return length === 0
    ? { cosine: 1, sine: 0, length: 0 }
    : { cosine: first / length, sine: second / length, length }
}

/**
 * Turns the values at `at` and `at + 1`, in place.
 *
 * @example rotatePair(new Float64Array([3, 4]), 0, givens(3, 4)) // [5, 0]
 */
export function rotatePair(values: Float64Array, at: number, { cosine, sine }: Turn): void {
  const first = values[at]!
  const second = values[at + 1]!
  values[at] = cosine * first + sine * second
  values[at + 1] = cosine * second - sine * first
}

/**
 * Turns columns `column` and `column + 1` of a square matrix kept row by row, in place.
 *
 * @example rotateColumns(matrix, 3, 1, turn)
 */
export function rotateColumns(values: Float64Array, size: number, column: number, turn: Turn): void {
  for (let row = 0; row < size; row++) rotatePair(values, row * size + column, turn)
}
