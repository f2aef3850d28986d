import { setLongWaves } from './longWaves.ts'
import { type SliceTable, sliceWidth } from './sliceTable.ts'
import { wallFactors } from './wallLoss.ts'

/** Below this |Γl|² five terms of the power series are exact to a part in 10¹³. */
const shortWave = 0.05

const factors = new Float64Array(4)
/** cosh Γl, sinh Γl/Γl and their difference over (Γl)², real and imaginary parts. */
const longWaves = new Float64Array(6)

/**
 * Carries `columns` vectors (p, U), each four numbers Re p, Im p, Re U, Im U in `state`, from the far end of a table
 * of slices to its near end, in place, at ω = `sqrtOmega`²: p1 = A p2 + B U2, U1 = C p2 + D U2, exp(+jωt).
 *
 * A slice is a cone with the wall's losses of its mean radius, written so that nothing is divided by the taper or by
 * Γ: with τ = r2/r1 − 1, s = sinh(Γl)/Γl, d = (cosh(Γl) − s)/(Γl)² and series and shunt terms Z and Y
 * A = (1+τ)cosh − τs, B = Z s, C = Y((1+τ)s + τ²d), D = (cosh + τs)/(1+τ). A cylinder is τ = 0; the determinant is
 * 1, since ZY(1+τ) = (Γl)². One long function, because it is where all of the time goes.
 *
 * @example carryBack(table, Math.sqrt(omega), state, 1)
 */
export function carryBack(table: SliceTable, sqrtOmega: number, state: Float64Array, columns: number): void {
  const { figures, losses } = table
  const wall = factors
  const long = longWaves
  const omega = sqrtOmega * sqrtOmega
  for (let row = (table.count - 1) * sliceWidth; row >= 0; row -= sliceWidth) {
    wallFactors(losses, figures[row]! * sqrtOmega, figures[row + 1]!, figures[row + 2]!, wall)
    const zRe = wall[0]!
    const zIm = wall[1]!
    const yRe = wall[2]!
    const yIm = wall[3]!
    const delay = -omega * omega * figures[row + 3]!
    const re = delay * (zRe * yRe - zIm * yIm)
    const im = delay * (zRe * yIm + zIm * yRe)
    let coshRe: number
    let coshIm: number
    let sRe: number
    let sIm: number
    let dRe: number
    let dIm: number
    if (re * re + im * im < shortWave * shortWave) {
      const re2 = re * re - im * im
      const im2 = 2 * re * im
      const re3 = re2 * re - im2 * im
      const im3 = re2 * im + im2 * re
      const re4 = re2 * re2 - im2 * im2
      const im4 = 2 * re2 * im2
      coshRe = 1 + re * (1 / 2) + re2 * (1 / 24) + re3 * (1 / 720) + re4 * (1 / 40320)
      coshIm = im * (1 / 2) + im2 * (1 / 24) + im3 * (1 / 720) + im4 * (1 / 40320)
      sRe = 1 + re * (1 / 6) + re2 * (1 / 120) + re3 * (1 / 5040) + re4 * (1 / 362880)
      sIm = im * (1 / 6) + im2 * (1 / 120) + im3 * (1 / 5040) + im4 * (1 / 362880)
      dRe = 1 / 3 + re * (1 / 30) + re2 * (1 / 840) + re3 * (1 / 45360) + re4 * (1 / 3991680)
      dIm = im * (1 / 30) + im2 * (1 / 840) + im3 * (1 / 45360) + im4 * (1 / 3991680)
    } else {
      setLongWaves(re, im, long)
      coshRe = long[0]!
      coshIm = long[1]!
      sRe = long[2]!
      sIm = long[3]!
      dRe = long[4]!
      dIm = long[5]!
    }
    const taper = figures[row + 4]!
    const widening = 1 + taper
    const inertance = omega * figures[row + 5]!
    const compliance = omega * figures[row + 6]!
    const narrowing = 1 / widening
    const shuntRe = widening * sRe + taper * taper * dRe
    const shuntIm = widening * sIm + taper * taper * dIm
    const aRe = widening * coshRe - taper * sRe
    const aIm = widening * coshIm - taper * sIm
    const bRe = -inertance * (zRe * sIm + zIm * sRe)
    const bIm = inertance * (zRe * sRe - zIm * sIm)
    const cRe = -compliance * (yRe * shuntIm + yIm * shuntRe)
    const cIm = compliance * (yRe * shuntRe - yIm * shuntIm)
    const eRe = (coshRe + taper * sRe) * narrowing
    const eIm = (coshIm + taper * sIm) * narrowing
    for (let at = 0; at < 4 * columns; at += 4) {
      const pRe = state[at]!
      const pIm = state[at + 1]!
      const uRe = state[at + 2]!
      const uIm = state[at + 3]!
      state[at] = aRe * pRe - aIm * pIm + bRe * uRe - bIm * uIm
      state[at + 1] = aRe * pIm + aIm * pRe + bRe * uIm + bIm * uRe
      state[at + 2] = cRe * pRe - cIm * pIm + eRe * uRe - eIm * uIm
      state[at + 3] = cRe * pIm + cIm * pRe + eRe * uIm + eIm * uRe
    }
  }
}

/**
 * As `carryBack` for one vector through cylinders that all have the wall factors at `wall[at…]`: loops of the valves'
 * bore, whose factors are the same for every fingering.
 *
 * @example carryTubes(inserts, Math.sqrt(omega), wall, 4 * i, state)
 */
export function carryTubes(
  table: SliceTable,
  sqrtOmega: number,
  wall: Float64Array,
  at: number,
  state: Float64Array,
): void {
  const { figures } = table
  const long = longWaves
  const omega = sqrtOmega * sqrtOmega
  const zRe = wall[at]!
  const zIm = wall[at + 1]!
  const yRe = wall[at + 2]!
  const yIm = wall[at + 3]!
  for (let row = (table.count - 1) * sliceWidth; row >= 0; row -= sliceWidth) {
    const delay = -omega * omega * figures[row + 3]!
    setLongWaves(delay * (zRe * yRe - zIm * yIm), delay * (zRe * yIm + zIm * yRe), long)
    const coshRe = long[0]!
    const coshIm = long[1]!
    const sRe = long[2]!
    const sIm = long[3]!
    const inertance = omega * figures[row + 5]!
    const compliance = omega * figures[row + 6]!
    const bRe = -inertance * (zRe * sIm + zIm * sRe)
    const bIm = inertance * (zRe * sRe - zIm * sIm)
    const cRe = -compliance * (yRe * sIm + yIm * sRe)
    const cIm = compliance * (yRe * sRe - yIm * sIm)
    const pRe = state[0]!
    const pIm = state[1]!
    const uRe = state[2]!
    const uIm = state[3]!
    state[0] = coshRe * pRe - coshIm * pIm + bRe * uRe - bIm * uIm
    state[1] = coshRe * pIm + coshIm * pRe + bRe * uIm + bIm * uRe
    state[2] = cRe * pRe - cIm * pIm + coshRe * uRe - coshIm * uIm
    state[3] = cRe * pIm + cIm * pRe + coshRe * uIm + coshIm * uRe
  }
}
