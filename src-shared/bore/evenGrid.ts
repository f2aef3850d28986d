/**
 * Numbers on an even grid of √f: `width` of them (a multiple of four) at each point, one point after
 * the other.
 */
export interface EvenGrid {
  readonly startRootHz: number
  readonly stepRootHz: number
  readonly count: number
  readonly width: number
  readonly values: Float64Array
}

/** Points of the polynomial. */
const span = 8
/** (−1)^(7−i)/(i!(7−i)!). */
const scale = Float64Array.from([
  -1 / 5040,
  1 / 720,
  -1 / 240,
  1 / 144,
  -1 / 144,
  1 / 240,
  -1 / 720,
  1 / 5040,
])
const weights = new Float64Array(span)

/** The fewest points a grid can have. */
export const fewestPoints = span

/** Sets the eight weights for a √f and answers the first of the eight points. */
function setWeights(grid: EvenGrid, rootHz: number): number {
  const w = weights
  const place = (rootHz - grid.startRootHz) / grid.stepRootHz
  const first = Math.max(0, Math.min(grid.count - span, Math.floor(place) - 3))
  const t = place - first
  let product = 1
  for (let i = 0; i < span; i++) {
    w[i] = product * scale[i]!
    product *= t - i
  }
  product = 1
  for (let i = span - 1; i >= 0; i--) {
    w[i] = w[i]! * product
    product *= t - i
  }
  return first
}

/**
 * All numbers of a grid at a √f in its range, into `out[0..width − 1]`, by the polynomial through the eight nearest
 * points (Lagrange). Beyond the range it runs on from the last eight: do not ask for it.
 *
 * @example readGrid(grid, Math.sqrt(466.2), out)
 */
export function readGrid(grid: EvenGrid, rootHz: number, out: Float64Array): void {
  const { values, width } = grid
  const w = weights
  const from = setWeights(grid, rootHz) * width
  for (let k = 0; k < width; k += 4) {
    let a = 0
    let b = 0
    let c = 0
    let d = 0
    for (let i = 0, at = from + k; i < span; i++, at += width) {
      const weight = w[i]!
      a += weight * values[at]!
      b += weight * values[at + 1]!
      c += weight * values[at + 2]!
      d += weight * values[at + 3]!
    }
    out[k] = a
    out[k + 1] = b
    out[k + 2] = c
    out[k + 3] = d
  }
}
