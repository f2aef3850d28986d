import type { WallLosses } from './section.ts'

/** Beyond this the far series is good to 1e-12; below it the power series is. */
const farFrom = 20
const farTerms = 15

/**
 * Coefficients of F(rv·e^(−jπ/4)) in powers of 1/rv. With q = J1/J0 the Bessel equation becomes q′ = 1 + q² − q/z;
 * its solution that starts at −j (the wave that decays into the wall's layer) has a series in 1/z.
 */
const far = farCoefficients()

function farCoefficients(): { readonly re: Float64Array; readonly im: Float64Array } {
  const q: [number, number][] = [[0, -1]]
  for (let k = 1; k < farTerms; k++) {
    let re = (2 - k) * q[k - 1]![0]
    let im = (2 - k) * q[k - 1]![1]
    for (let i = 1; i < k; i++) {
      re -= q[i]![0] * q[k - i]![0] - q[i]![1] * q[k - i]![1]
      im -= q[i]![0] * q[k - i]![1] + q[i]![1] * q[k - i]![0]
    }
    q.push([-im / 2, re / 2])
  }
  const turned = q.map(([re, im], k) => {
    const turn = ((k + 1) * Math.PI) / 4
    return [2 * (re * Math.cos(turn) - im * Math.sin(turn)), 2 * (re * Math.sin(turn) + im * Math.cos(turn))]
  })
  return { re: Float64Array.from(turned, (c) => c[0]!), im: Float64Array.from(turned, (c) => c[1]!) }
}

/**
 * F(z) = 2·J1(z)/(z·J0(z)) at z = rv·e^(−jπ/4): the share of a tube's cross-section held back by its wall
 * (Zwikker and Kosten, Sound Absorbing Materials, 1949). `rv` is the radius over the layer's thickness, 0 or more.
 * Writes the real and imaginary part at `out[at]` and `out[at + 1]`; good to 1e-11.
 *
 * @example wallShare(0, out, 0) // 1, 0: the wall holds all of the air
 */
export function wallShare(rv: number, out: Float64Array, at: number): void {
  if (rv < farFrom) nearWallShare(rv, out, at)
  else farWallShare(rv, out, at)
}

function farWallShare(rv: number, out: Float64Array, at: number): void {
  const inverse = 1 / rv
  let re = 0
  let im = 0
  const terms = rv > 150 ? 7 : rv > 50 ? 9 : farTerms
  for (let k = terms - 1; k >= 0; k--) {
    re = (re + far.re[k]!) * inverse
    im = (im + far.im[k]!) * inverse
  }
  out[at] = re
  out[at + 1] = im
}

const mostNearTerms = 120
const overK = Float64Array.from({ length: mostNearTerms + 3 }, (_, k) => 1 / Math.max(1, k))

/** J0 = Σ (jx)^k/k!², 2·J1/z = Σ (jx)^k/(k!(k+1)!), x = rv²/4: odd terms are imaginary, even ones real. */
function nearWallShare(rv: number, out: Float64Array, at: number): void {
  const x = (rv * rv) / 4
  let term = 1
  let sign = 1
  let j0Re = 1
  let j0Im = 0
  let j1Re = 1
  let j1Im = 0
  for (let k = 1; k < mostNearTerms; k += 2) {
    term *= x * overK[k]! * overK[k]!
    j0Im += sign * term
    j1Im += sign * term * overK[k + 1]!
    sign = -sign
    term *= x * overK[k + 1]! * overK[k + 1]!
    j0Re += sign * term
    j1Re += sign * term * overK[k + 2]!
    if (term < 1e-17 * (Math.abs(j0Re) + Math.abs(j0Im))) break
  }
  const scale = 1 / (j0Re * j0Re + j0Im * j0Im)
  out[at] = (j1Re * j0Re + j1Im * j0Im) * scale
  out[at + 1] = (j1Im * j0Re - j1Re * j0Im) * scale
}

const share = new Float64Array(2)

/**
 * By how much the wall changes a tube's series impedance (`out[0..1]`) and shunt admittance (`out[2..3]`) from the
 * lossless jωρ/S and jωS/(ρc²). `rv` is the radius over the viscous layer's thickness, `gammaMinusOne` γ − 1.
 *
 * Exact: Zwikker and Kosten (1949). Wide tube: Keefe, J. Acoust. Soc. Am. 75, 58 (1984), for rv well above 1.
 *
 * @example wallFactors('none', 50, 0.841, 0.4, out) // 1, 0, 1, 0
 */
export function wallFactors(
  losses: WallLosses,
  rv: number,
  sqrtPrandtl: number,
  gammaMinusOne: number,
  out: Float64Array,
): void {
  if (losses === 'exact') {
    wallShare(rv, share, 0)
    const re = 1 - share[0]!
    const im = -share[1]!
    const scale = 1 / (re * re + im * im)
    out[0] = re * scale
    out[1] = -im * scale
    wallShare(sqrtPrandtl * rv, share, 0)
    out[2] = 1 + gammaMinusOne * share[0]!
    out[3] = gammaMinusOne * share[1]!
  } else if (losses === 'wideTube') {
    wideTubeFactors(1 / rv, out)
  } else {
    out[0] = 1
    out[1] = 0
    out[2] = 1
    out[3] = 0
  }
}

/** Γ/(jω/c) = n and Zc·S/(ρc) = z give the factors n·z and n/z. */
function wideTubeFactors(u: number, out: Float64Array): void {
  const nRe = 1 + 1.045 * u
  const nIm = -u * (1.045 + u * (1.08 + 0.75 * u))
  const zRe = 1 + 0.369 * u
  const zIm = -u * (0.369 + u * (1.149 + 0.303 * u))
  out[0] = nRe * zRe - nIm * zIm
  out[1] = nRe * zIm + nIm * zRe
  const scale = 1 / (zRe * zRe + zIm * zIm)
  out[2] = (nRe * zRe + nIm * zIm) * scale
  out[3] = (nIm * zRe - nRe * zIm) * scale
}
