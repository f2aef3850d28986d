import { type BoreWaves, setWaves, wavesWidth } from './boreWaves.ts'

/**
 * The twelve numbers of a bore on an even grid of √f, so fine that between its points a polynomial through six of
 * them is as good as the exact figure.
 */
export interface SampledWaves {
  readonly startRootHz: number
  readonly stepRootHz: number
  readonly count: number
  readonly values: Float64Array
  /** Largest difference found between grid and exact figures, as a share of each number's size. */
  readonly interpolationError: number
}

/** Where to sample. `modeSpacingHz` is the least distance of two resonances. */
export interface SampledRange {
  readonly lowestHz: number
  readonly highestHz: number
  readonly modeSpacingHz: number
  readonly speedMPerS: number
}

const goodEnough = 2e-7
const mostNodes = 3000
const pointsPerSpacing = 16

/**
 * Samples a bore: exact figures at Chebyshev's points of √f (there the wall's losses are smooth down to the lowest
 * frequency), as many as the turning of the waves asks for, carried over to the even grid and checked in between.
 *
 * @example sampleWaves(waves, { lowestHz: 6, highestHz: 2000, modeSpacingHz: 120, speedMPerS: 345 })
 */
export function sampleWaves(waves: BoreWaves, range: SampledRange): SampledWaves {
  const turns = (2 * Math.PI * range.highestHz * waves.longerPartM) / range.speedMPerS
  let nodes = Math.ceil(turns + 9 * Math.cbrt(turns) + 8)
  let sampled = sampleAt(waves, range, nodes)
  while (!(sampled.interpolationError < goodEnough) && nodes < mostNodes) {
    nodes = Math.ceil(nodes * 1.4)
    sampled = sampleAt(waves, range, nodes)
  }
  return sampled
}

function sampleAt(waves: BoreWaves, range: SampledRange, nodes: number): SampledWaves {
  const low = Math.sqrt(range.lowestHz)
  const high = Math.sqrt(range.highestHz)
  const exact = new Float64Array((nodes + 1) * wavesWidth)
  const points = new Float64Array(nodes + 1)
  for (let j = 0; j <= nodes; j++) {
    points[j] = (low + high) / 2 - ((high - low) / 2) * Math.cos((Math.PI * j) / nodes)
    setWaves(waves, points[j]!, exact, j * wavesWidth)
  }
  const count = Math.ceil(((high - low) * 2 * high * pointsPerSpacing) / range.modeSpacingHz) + 6
  const grid = {
    startRootHz: low,
    stepRootHz: (high - low) / (count - 1),
    count,
    values: new Float64Array(count * wavesWidth),
  }
  for (let i = 0; i < count; i++)
    interpolateNodes(points, exact, low + i * grid.stepRootHz, grid.values, i * wavesWidth)
  return { ...grid, interpolationError: errorBetween(waves, grid, sizesOf(exact)) }
}

/** Barycentric interpolation: the weights of Chebyshev's points are ±1, halved at the ends. */
function interpolateNodes(
  points: Float64Array,
  exact: Float64Array,
  rootHz: number,
  out: Float64Array,
  at: number,
): void {
  const last = points.length - 1
  let weights = 0
  for (let j = 0; j <= last; j++) {
    const distance = rootHz - points[j]!
    if (Math.abs(distance) < 1e-13 * rootHz) {
      for (let k = 0; k < wavesWidth; k++) out[at + k] = exact[j * wavesWidth + k]!
      return
    }
    const weight = (j % 2 === 0 ? 1 : -1) / (j === 0 || j === last ? 2 * distance : distance)
    weights += weight
    const row = j * wavesWidth
    for (let k = 0; k < wavesWidth; k++) out[at + k] = out[at + k]! + weight * exact[row + k]!
  }
  for (let k = 0; k < wavesWidth; k++) out[at + k] = out[at + k]! / weights
}

/** Largest modulus of each of the six complex numbers over the nodes. */
function sizesOf(exact: Float64Array): Float64Array {
  const sizes = new Float64Array(wavesWidth / 2)
  for (let i = 0; i < exact.length; i += 2) {
    const pair = (i % wavesWidth) / 2
    sizes[pair] = Math.max(sizes[pair]!, Math.hypot(exact[i]!, exact[i + 1]!))
  }
  return sizes
}

const checkedShares = [0.013, 0.37, 0.71, 0.977]
const found = new Float64Array(wavesWidth)
const wanted = new Float64Array(wavesWidth)

function errorBetween(
  waves: BoreWaves,
  grid: Omit<SampledWaves, 'interpolationError'>,
  sizes: Float64Array,
): number {
  let worst = 0
  for (const share of checkedShares) {
    const rootHz = grid.startRootHz + (Math.floor(share * (grid.count - 1)) + 0.5) * grid.stepRootHz
    setWaves(waves, rootHz, wanted, 0)
    readWaves(grid, rootHz, found)
    for (let pair = 0; pair < sizes.length; pair++) {
      const error = Math.hypot(
        found[2 * pair]! - wanted[2 * pair]!,
        found[2 * pair + 1]! - wanted[2 * pair + 1]!,
      )
      if (error > 0) worst = Math.max(worst, error / sizes[pair]!)
      else if (error !== 0) return Number.POSITIVE_INFINITY
    }
  }
  return worst
}

/**
 * The twelve numbers at any frequency of the grid's range, into `out[0..11]`, by the polynomial through the six
 * nearest points. Beyond the range it runs on from the last six points: do not ask for it.
 *
 * @example readWaves(sampled, Math.sqrt(466.2), out)
 */
export function readWaves(
  grid: Pick<SampledWaves, 'startRootHz' | 'stepRootHz' | 'count' | 'values'>,
  rootHz: number,
  out: Float64Array,
): void {
  const place = (rootHz - grid.startRootHz) / grid.stepRootHz
  const first = Math.max(0, Math.min(grid.count - 6, Math.floor(place) - 2))
  const t = place - first
  const t1 = t - 1
  const t2 = t - 2
  const t3 = t - 3
  const t4 = t - 4
  const t5 = t - 5
  const left = t * t1 * t2
  const right = t3 * t4 * t5
  const w0 = (t1 * t2 * right) / -120
  const w1 = (t * t2 * right) / 24
  const w2 = (t * t1 * right) / -12
  const w3 = (left * t4 * t5) / 12
  const w4 = (left * t3 * t5) / -24
  const w5 = (left * t3 * t4) / 120
  const values = grid.values
  let at = first * wavesWidth
  for (let k = 0; k < wavesWidth; k++, at++) {
    out[k] =
      w0 * values[at]! +
      w1 * values[at + 12]! +
      w2 * values[at + 24]! +
      w3 * values[at + 36]! +
      w4 * values[at + 48]! +
      w5 * values[at + 60]!
  }
}
