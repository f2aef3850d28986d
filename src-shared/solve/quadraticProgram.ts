import { ActiveSet } from './activeSet.ts'
import { cholesky, inverseTranspose } from './cholesky.ts'
import { type HalfSpace, slackOf } from './halfSpace.ts'

/** Least of `½·xᵀ·matrix·x + gradient·x` where every half-space holds; `matrix` positive definite, row by row. */
export interface QuadraticProgram {
  readonly matrix: Float64Array
  readonly gradient: Float64Array
  readonly halfSpaces: readonly HalfSpace[]
}

/** `multipliers[i]`, at least 0, is how fast the least value rises as half-space `i` is drawn in. */
export type QuadraticAnswer =
  | { readonly kind: 'solved'; readonly point: Float64Array; readonly multipliers: Float64Array }
  | { readonly kind: 'infeasible' }
  | { readonly kind: 'notConvex' }
  | { readonly kind: 'stopped' }

/** Farther outside than this counts as outside; the models keep lengths in units of about a cent. */
const outside = 1e-10

/**
 * Solves a strictly convex quadratic program from its free minimum inwards, adding the half-space that is
 * missed most until none is missed (Goldfarb and Idnani, Math. Programming 27, 1 (1983)). Exact but for
 * rounding; half-spaces that depend on each other are allowed. Indices of half-spaces that are `likely` to hold
 * the answer spare it the search among all; they do not change it.
 *
 * @example
 * solveQuadratic({ matrix: [1], gradient: [-3], halfSpaces: [{ columns: [0], coefficients: [1], sign: -1, least: -2 }] })
 * // point [2], multipliers [1]
 */
export function solveQuadratic(program: QuadraticProgram, likely: readonly number[] = []): QuadraticAnswer {
  const size = program.gradient.length
  const factor = cholesky(program.matrix, size)
  if (!factor) return { kind: 'notConvex' }
  const set = new ActiveSet(inverseTranspose(factor, size), program.gradient)
  const all = program.halfSpaces.map((_, at) => at)
  const most = 50 * (size + 10) + 10 * all.length
  for (let step = 0; step < most; step++) {
    const missed =
      mostMissed(program.halfSpaces, likely, set.point) ?? mostMissed(program.halfSpaces, all, set.point)
    if (missed === null) {
      return { kind: 'solved', point: set.point, multipliers: set.multipliersOf(all.length) }
    }
    if (!set.add(program.halfSpaces, missed)) return { kind: 'infeasible' }
  }
  return { kind: 'stopped' }
}

function mostMissed(
  halfSpaces: readonly HalfSpace[],
  among: readonly number[],
  point: Float64Array,
): number | null {
  let worst = -outside
  let found: number | null = null
  for (const at of among) {
    const slack = slackOf(halfSpaces[at]!, point)
    if (slack < worst) {
      worst = slack
      found = at
    }
  }
  return found
}
