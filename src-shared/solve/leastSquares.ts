import { type HalfSpace, slackOf } from './halfSpace.ts'
import { solveQuadratic } from './quadraticProgram.ts'
import type { RouteModel } from './routeModel.ts'
import { routesStayAbove, squaresAt, squaresCurvature } from './weightedSquares.ts'

/** A point of the model (one value a column) with the pull of each half-space there. */
export interface LeastSquares {
  readonly kind: 'converged' | 'stopped'
  readonly point: Float64Array
  /** How fast `½·Σ weight·error²` rises as each half-space is drawn in by a unit. */
  readonly multipliers: Float64Array
}

/** A point, or that no point lies within every half-space. */
export type LeastSquaresAnswer = LeastSquares | { readonly kind: 'infeasible' }

/** A step below this, in units of about a cent, ends the search. */
const stillness = 1e-9
/** So does a step below this that rounding hides in the sum; many half-spaces in one corner leave that much. */
const hiddenStillness = 1e-5
const mostSteps = 80
/** So far outside a half-space a point still counts as inside; rounding puts it there. */
const rounding = 1e-8
/** Share of a sum of squares that rounding may add to it. */
const sumRounding = 1e-12

/**
 * Least weighted sum of squared errors within half-spaces, by Newton's steps, each a quadratic program solved
 * exactly. The logarithm's own curvature is kept, so that the steps settle quadratically; the sum is convex
 * wherever no row is flatter than 1731 cents, so what is found there is the least of all. Loops that the rows
 * do not determine stay nearest to where they started. The routes at `start` must be above 0.
 *
 * @example leastSquares(model, start, endHalfSpaces(model))
 */
export function leastSquares(
  model: RouteModel,
  start: Float64Array,
  halfSpaces: readonly HalfSpace[],
): LeastSquaresAnswer {
  let point = start
  let multipliers = new Float64Array(halfSpaces.length)
  for (let count = 0; count < mostSteps; count++) {
    const { gradient, matrix } = squaresCurvature(model, point)
    const here = point
    const shifted = halfSpaces.map((halfSpace) => ({ ...halfSpace, least: -slackOf(halfSpace, here) }))
    const answer = solveQuadratic({ matrix, gradient, halfSpaces: shifted }, holdingOf(multipliers))
    if (answer.kind === 'infeasible') return answer
    if (answer.kind !== 'solved') break
    multipliers = Float64Array.from(answer.multipliers)
    const inside = shifted.every((halfSpace) => halfSpace.least <= rounding)
    const next = inside ? descend(model, point, answer.point, gradient) : enter(model, point, answer.point)
    const still = next === point || isStill(model, point, next, answer.point)
    point = next
    if (still && inside) return { kind: 'converged', point, multipliers }
  }
  return { kind: 'stopped', point, multipliers }
}

function isStill(model: RouteModel, before: Float64Array, after: Float64Array, step: Float64Array): boolean {
  const length = largestOf(step)
  if (length >= hiddenStillness) return false
  const sum = squaresAt(model, before)
  return length < stillness || Math.abs(squaresAt(model, after) - sum) <= sumRounding * sum
}

/** As much of a step as lowers the sum by a fair part of what its slope promises. */
function descend(model: RouteModel, point: Float64Array, step: Float64Array, gradient: Float64Array) {
  const before = squaresAt(model, point)
  const promised = step.reduce((sum, value, at) => sum + value * gradient[at]!, 0)
  for (let share = 1; share > 1e-12; share /= 2) {
    const next = moved(point, step, share)
    if (squaresAt(model, next) <= before * (1 + sumRounding) + 1e-4 * share * promised) return next
  }
  return point
}

/** A first step may have to come in from outside the half-spaces, at a cost in squares. */
function enter(model: RouteModel, point: Float64Array, step: Float64Array) {
  let share = 1
  while (!routesStayAbove(model, moved(point, step, share)) && share > 1e-12) share /= 2
  return moved(point, step, share)
}

function holdingOf(multipliers: Float64Array): readonly number[] {
  return [...multipliers.keys()].filter((at) => multipliers[at]! > 0)
}

function moved(point: Float64Array, step: Float64Array, share: number): Float64Array {
  return point.map((value, at) => value + share * step[at]!)
}

function largestOf(values: Float64Array): number {
  return values.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
}
