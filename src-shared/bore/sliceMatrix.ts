import {
  atCompliance,
  atDelay,
  atGammaMinusOne,
  atInertance,
  atRv,
  atSqrtPrandtl,
  atTaper,
  type SliceTable,
  sliceWidth,
} from './sliceTable.ts'
import { wallFactors } from './wallLoss.ts'

/** Below this |Γl|² five terms of the power series are exact to a part in 10¹³. */
const shortWave = 0.05

/** cosh Γl, sinh Γl/Γl and their difference over (Γl)², real and imaginary parts. */
const waves = new Float64Array(6)
const factors = new Float64Array(4)

/**
 * Transmission matrix of slice `index` at ω = `sqrtOmega`²: p1 = A p2 + B U2, U1 = C p2 + D U2, exp(+jωt). Writes
 * Re A, Im A, Re B … Im D into `out[0..7]`.
 *
 * A conical slice with the wall's losses of its mean radius, written so that nothing is divided by the taper or by Γ:
 * with τ = r2/r1 − 1, s = sinh(Γl)/Γl and d = (cosh(Γl) − s)/(Γl)²
 * A = (1+τ)cosh − τs, B = Z s, C = Y((1+τ)s + τ²d), D = (cosh + τs)/(1+τ). A cylinder is τ = 0; the determinant is 1
 * for every τ, Z and Y with ZY(1+τ) = (Γl)².
 *
 * @example sliceMatrix(table, 0, Math.sqrt(2 * Math.PI * 440), out)
 */
export function sliceMatrix(table: SliceTable, index: number, sqrtOmega: number, out: Float64Array): void {
  const figures = table.figures
  const row = index * sliceWidth
  const omega = sqrtOmega * sqrtOmega
  wallFactors(
    table.losses,
    figures[row + atRv]! * sqrtOmega,
    figures[row + atSqrtPrandtl]!,
    figures[row + atGammaMinusOne]!,
    factors,
  )
  const zRe = factors[0]!
  const zIm = factors[1]!
  const yRe = factors[2]!
  const yIm = factors[3]!
  const delay = -omega * omega * figures[row + atDelay]!
  setWaves(delay * (zRe * yRe - zIm * yIm), delay * (zRe * yIm + zIm * yRe))
  const taper = figures[row + atTaper]!
  const widening = 1 + taper
  out[0] = widening * waves[0]! - taper * waves[2]!
  out[1] = widening * waves[1]! - taper * waves[3]!
  const inertance = omega * figures[row + atInertance]!
  out[2] = -inertance * (zRe * waves[3]! + zIm * waves[2]!)
  out[3] = inertance * (zRe * waves[2]! - zIm * waves[3]!)
  const compliance = omega * figures[row + atCompliance]!
  const shuntRe = widening * waves[2]! + taper * taper * waves[4]!
  const shuntIm = widening * waves[3]! + taper * taper * waves[5]!
  out[4] = -compliance * (yRe * shuntIm + yIm * shuntRe)
  out[5] = compliance * (yRe * shuntRe - yIm * shuntIm)
  out[6] = (waves[0]! + taper * waves[2]!) / widening
  out[7] = (waves[1]! + taper * waves[3]!) / widening
}

/** Fills `waves` from t = (Γl)². */
function setWaves(re: number, im: number): void {
  if (re * re + im * im < shortWave * shortWave) setShortWaves(re, im)
  else setLongWaves(re, im)
}

/** Σ t^k/(2k)!, Σ t^k/(2k+1)! and Σ t^(k−1)·2k/(2k+1)!. */
function setShortWaves(re: number, im: number): void {
  const re2 = re * re - im * im
  const im2 = 2 * re * im
  const re3 = re2 * re - im2 * im
  const im3 = re2 * im + im2 * re
  const re4 = re2 * re2 - im2 * im2
  const im4 = 2 * re2 * im2
  waves[0] = 1 + re / 2 + re2 / 24 + re3 / 720 + re4 / 40320
  waves[1] = im / 2 + im2 / 24 + im3 / 720 + im4 / 40320
  waves[2] = 1 + re / 6 + re2 / 120 + re3 / 5040 + re4 / 362880
  waves[3] = im / 6 + im2 / 120 + im3 / 5040 + im4 / 362880
  waves[4] = 1 / 3 + re / 30 + re2 / 840 + re3 / 45360 + re4 / 3991680
  waves[5] = im / 30 + im2 / 840 + im3 / 45360 + im4 / 3991680
}

function setLongWaves(re: number, im: number): void {
  const size = Math.hypot(re, im)
  const rootRe = Math.sqrt(Math.max(0, (size + re) / 2))
  const rootIm = rootRe > 1e-9 * Math.sqrt(size) ? im / (2 * rootRe) : Math.sqrt((size - re) / 2)
  const grow = Math.exp(rootRe)
  const fade = 1 / grow
  const cos = Math.cos(rootIm)
  const sin = Math.sin(rootIm)
  const coshRe = ((grow + fade) / 2) * cos
  const coshIm = ((grow - fade) / 2) * sin
  const sinhRe = ((grow - fade) / 2) * cos
  const sinhIm = ((grow + fade) / 2) * sin
  const sRe = (sinhRe * rootRe + sinhIm * rootIm) / size
  const sIm = (sinhIm * rootRe - sinhRe * rootIm) / size
  const scale = 1 / (size * size)
  waves[0] = coshRe
  waves[1] = coshIm
  waves[2] = sRe
  waves[3] = sIm
  waves[4] = ((coshRe - sRe) * re + (coshIm - sIm) * im) * scale
  waves[5] = ((coshIm - sIm) * re - (coshRe - sRe) * im) * scale
}

const matrix = new Float64Array(8)

/**
 * Carries `columns` vectors (p, U), each four numbers Re p, Im p, Re U, Im U in `state`, from the far end of a table
 * of slices to its near end, in place.
 *
 * @example carryBack(table, Math.sqrt(omega), state, 1)
 */
export function carryBack(table: SliceTable, sqrtOmega: number, state: Float64Array, columns: number): void {
  for (let i = table.count - 1; i >= 0; i--) {
    sliceMatrix(table, i, sqrtOmega, matrix)
    for (let c = 0; c < 4 * columns; c += 4) applyMatrix(matrix, state, c)
  }
}

function applyMatrix(m: Float64Array, state: Float64Array, at: number): void {
  const pRe = state[at]!
  const pIm = state[at + 1]!
  const uRe = state[at + 2]!
  const uIm = state[at + 3]!
  state[at] = m[0]! * pRe - m[1]! * pIm + m[2]! * uRe - m[3]! * uIm
  state[at + 1] = m[0]! * pIm + m[1]! * pRe + m[2]! * uIm + m[3]! * uRe
  state[at + 2] = m[4]! * pRe - m[5]! * pIm + m[6]! * uRe - m[7]! * uIm
  state[at + 3] = m[4]! * pIm + m[5]! * pRe + m[6]! * uIm + m[7]! * uRe
}
