import { wavesWidth } from './boreWaves.ts'
import { carryBack, carryTubes } from './carryBack.ts'
import { type EvenGrid, readGrid } from './evenGrid.ts'
import { type SliceTable, sliceWidth } from './sliceTable.ts'
import { wallFactors } from './wallLoss.ts'

/**
 * One fingering: pressure and flow at the lips (Re p, Im p, Re U, Im U, up to a common factor) over √f. Their
 * quotient is the input impedance.
 */
export type Route = EvenGrid

const sqrtTwoPi = Math.sqrt(2 * Math.PI)
const waves = new Float64Array(wavesWidth)
const valves = new Float64Array(4)
const lips = new Float64Array(4)

/**
 * Pressure and flow at the lips from the twelve numbers of a bore at `values[at…]` and the loops, into `out[to…]`.
 *
 * @example setLips(values, 0, Math.sqrt(440), inserts, out, 0)
 */
export function setLips(
  values: Float64Array,
  at: number,
  rootHz: number,
  inserts: SliceTable,
  out: Float64Array,
  to: number,
): void {
  setValves(values, at)
  if (inserts.count > 0) carryBack(inserts, sqrtTwoPi * rootHz, valves, 1)
  setLipsFromValves(values, at, out, to)
}

function setValves(values: Float64Array, at: number): void {
  for (let part = 0; part < 4; part++) valves[part] = values[at + 8 + part]!
}

function setLipsFromValves(values: Float64Array, at: number, out: Float64Array, to: number): void {
  const state = valves
  const pRe = state[0]!
  const pIm = state[1]!
  const uRe = state[2]!
  const uIm = state[3]!
  for (let row = 0; row < 2; row++) {
    const m = at + 4 * row
    const p = to + 2 * row
    out[p] = values[m]! * pRe - values[m + 1]! * pIm + values[m + 2]! * uRe - values[m + 3]! * uIm
    out[p + 1] = values[m]! * pIm + values[m + 1]! * pRe + values[m + 2]! * uIm + values[m + 3]! * uRe
  }
}

/** The wall factors of a tube of the valves' bore at every point of a bore's grid, and that tube's figure for rv. */
export interface ValvesWall {
  readonly rv: number
  readonly factors: Float64Array
}

/**
 * Wall factors of a tube (the first slice of a table) on a grid, to be used again for every fingering.
 *
 * @example wallOnGrid(sampled, table)
 */
export function wallOnGrid(sampled: EvenGrid, tube: SliceTable): ValvesWall {
  const [rv, sqrtPrandtl, gammaMinusOne] = tube.figures as unknown as [number, number, number]
  const factors = new Float64Array(4 * sampled.count)
  const here = new Float64Array(4)
  for (let i = 0; i < sampled.count; i++) {
    const rootHz = sampled.startRootHz + i * sampled.stepRootHz
    wallFactors(tube.losses, rv * sqrtTwoPi * rootHz, sqrtPrandtl, gammaMinusOne, here)
    factors.set(here, 4 * i)
  }
  return { rv, factors }
}

function allOfBore(inserts: SliceTable, rv: number): boolean {
  for (let i = 0; i < inserts.count; i++)
    if (Math.abs(inserts.figures[i * sliceWidth]! - rv) > 1e-12 * rv) return false
  return true
}

/** As `routeAlong` on the bore's own grid, for loops of the valves' bore. */
function routeAlongValvesBore(sampled: EvenGrid, inserts: SliceTable, wall: ValvesWall): Route {
  const { startRootHz, stepRootHz, count } = sampled
  const values = new Float64Array(count * 4)
  for (let i = 0; i < count; i++) {
    setValves(sampled.values, i * wavesWidth)
    carryTubes(inserts, sqrtTwoPi * (startRootHz + i * stepRootHz), wall.factors, 4 * i, valves)
    setLipsFromValves(sampled.values, i * wavesWidth, values, 4 * i)
  }
  return { startRootHz, stepRootHz, count, width: 4, values }
}

/**
 * The route through a sampled bore with loops put in. `finer` times as many points as the bore has, for loops that
 * make the waves turn faster than the bore alone does. `wall`, when given, saves the wall's share of the work.
 *
 * @example routeAlong(sampled, inserts, 1)
 */
export function routeAlong(sampled: EvenGrid, inserts: SliceTable, finer: number, wall?: ValvesWall): Route {
  if (wall !== undefined && finer === 1 && allOfBore(inserts, wall.rv))
    return routeAlongValvesBore(sampled, inserts, wall)
  const count = (sampled.count - 1) * finer + 1
  const stepRootHz = sampled.stepRootHz / finer
  const values = new Float64Array(count * 4)
  for (let i = 0; i < count; i++) {
    const rootHz = sampled.startRootHz + i * stepRootHz
    if (i % finer === 0) {
      setLips(sampled.values, (i / finer) * wavesWidth, rootHz, inserts, values, i * 4)
    } else {
      readGrid(sampled, rootHz, waves)
      setLips(waves, 0, rootHz, inserts, values, i * 4)
    }
  }
  return { startRootHz: sampled.startRootHz, stepRootHz, count, width: 4, values }
}

/**
 * Input impedance p/U at √f in the sampled range, Pa·s/m³: real and imaginary part into `out[at]`, `out[at + 1]`.
 *
 * @example setImpedance(route, Math.sqrt(466.2), out, 0)
 */
export function setImpedance(route: Route, rootHz: number, out: Float64Array, at: number): void {
  readGrid(route, rootHz, lips)
  divide(lips, out, at)
}

/**
 * p/U of Re p, Im p, Re U, Im U.
 *
 * @example divide(Float64Array.of(0, 6, 0, 2), out, 0) // 3, 0
 */
export function divide(state: Float64Array, out: Float64Array, at: number): void {
  const scale = 1 / (state[2]! * state[2]! + state[3]! * state[3]!)
  out[at] = (state[0]! * state[2]! + state[1]! * state[3]!) * scale
  out[at + 1] = (state[1]! * state[2]! - state[0]! * state[3]!) * scale
}
