/**
 * Least `Σ columnCosts·x` with `columnLower ≤ x ≤ columnUpper` and `rowLower ≤ rows·x ≤ rowUpper`. Ends may be
 * infinite. Row `i` has its coefficients at `rowStarts[i]` up to `rowStarts[i + 1]` of `columnIndices` and `values`.
 */
export interface LinearProgram {
  readonly columnCosts: readonly number[]
  readonly columnLower: readonly number[]
  readonly columnUpper: readonly number[]
  readonly rowLower: readonly number[]
  readonly rowUpper: readonly number[]
  readonly rowStarts: readonly number[]
  readonly columnIndices: readonly number[]
  readonly values: readonly number[]
}

/** `columnPulls[j]` is how fast the least value changes with the end that holds column `j`; 0 when none does. */
export type LinearAnswer =
  | {
      readonly kind: 'optimal'
      readonly columnValues: ArrayLike<number>
      readonly columnPulls: ArrayLike<number>
    }
  | { readonly kind: 'infeasible' }
  | { readonly kind: 'unbounded' }
  | { readonly kind: 'failed'; readonly reason: string }

/** A loaded solver of linear programs. Loading is asynchronous and belongs to whoever runs the library. */
export interface LinearProgrammer {
  solve(program: LinearProgram): LinearAnswer
}
