import { wavesWidth } from './boreWaves.ts'
import { readWaves, type SampledWaves } from './sampledWaves.ts'
import { carryBack } from './sliceMatrix.ts'
import type { SliceTable } from './sliceTable.ts'

/** A sampled bore with the loops of one fingering in it. */
export interface Route {
  readonly sampled: SampledWaves
  readonly inserts: SliceTable
}

const sqrtTwoPi = Math.sqrt(2 * Math.PI)
const waves = new Float64Array(wavesWidth)
const state = new Float64Array(4)
/** Re p, Im p, Re U, Im U at the lips. */
const lips = new Float64Array(4)

function setLips(values: Float64Array, at: number, rootHz: number, inserts: SliceTable): void {
  for (let part = 0; part < 4; part++) state[part] = values[at + 8 + part]!
  carryBack(inserts, sqrtTwoPi * rootHz, state, 1)
  const pRe = state[0]!
  const pIm = state[1]!
  const uRe = state[2]!
  const uIm = state[3]!
  for (let row = 0; row < 2; row++) {
    const m = at + 4 * row
    lips[2 * row] = values[m]! * pRe - values[m + 1]! * pIm + values[m + 2]! * uRe - values[m + 3]! * uIm
    lips[2 * row + 1] = values[m]! * pIm + values[m + 1]! * pRe + values[m + 2]! * uIm + values[m + 3]! * uRe
  }
}

function admittanceSquaredAtLips(): number {
  const p = lips[0]! * lips[0]! + lips[1]! * lips[1]!
  return (lips[2]! * lips[2]! + lips[3]! * lips[3]!) / p
}

/**
 * |U/p|² at the lips for a point of the grid: its minima are the resonances, and near one it is a plain parabola.
 *
 * @example admittanceSquaredOnGrid(route, 0)
 */
export function admittanceSquaredOnGrid(route: Route, index: number): number {
  const { sampled, inserts } = route
  const rootHz = sampled.startRootHz + index * sampled.stepRootHz
  setLips(sampled.values, index * wavesWidth, rootHz, inserts)
  return admittanceSquaredAtLips()
}

/**
 * |U/p|² at the lips at √f anywhere in the sampled range.
 *
 * @example admittanceSquared(route, Math.sqrt(466.2))
 */
export function admittanceSquared(route: Route, rootHz: number): number {
  readWaves(route.sampled, rootHz, waves)
  setLips(waves, 0, rootHz, route.inserts)
  return admittanceSquaredAtLips()
}

/**
 * Input impedance p/U at √f in the sampled range, Pa·s/m³: real and imaginary part into `out[at]`, `out[at + 1]`.
 *
 * @example setImpedance(route, Math.sqrt(466.2), out, 0)
 */
export function setImpedance(route: Route, rootHz: number, out: Float64Array, at: number): void {
  readWaves(route.sampled, rootHz, waves)
  setLips(waves, 0, rootHz, route.inserts)
  const scale = 1 / (lips[2]! * lips[2]! + lips[3]! * lips[3]!)
  out[at] = (lips[0]! * lips[2]! + lips[1]! * lips[3]!) * scale
  out[at + 1] = (lips[1]! * lips[2]! - lips[0]! * lips[3]!) * scale
}
