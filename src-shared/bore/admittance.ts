import { readGrid } from './evenGrid.ts'
import type { Route } from './route.ts'

const lips = new Float64Array(4)

/**
 * |U/p|² at a point of the route's grid: its minima are the resonances, and near one it is a plain parabola.
 *
 * @example admittanceSquaredOnGrid(route, 0)
 */
export function admittanceSquaredOnGrid({ values }: Route, index: number): number {
  return admittanceSquaredOf(values, index * 4)
}

function admittanceSquaredOf(values: Float64Array, at: number): number {
  const pRe = values[at]!
  const pIm = values[at + 1]!
  const uRe = values[at + 2]!
  const uIm = values[at + 3]!
  return (uRe * uRe + uIm * uIm) / (pRe * pRe + pIm * pIm)
}

/**
 * |U/p|² at √f anywhere in the sampled range.
 *
 * @example admittanceSquared(route, Math.sqrt(466.2))
 */
export function admittanceSquared(route: Route, rootHz: number): number {
  readGrid(route, rootHz, lips)
  return admittanceSquaredOf(lips, 0)
}
