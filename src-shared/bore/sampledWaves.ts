import { type BoreWaves, setWaves, wavesWidth } from './boreWaves.ts'
import { type EvenGrid, fewestPoints, readGrid } from './evenGrid.ts'

/**
 * The twelve numbers of a bore on an even grid of √f, so fine that between its points a polynomial through eight of
 * them is as good as the exact figure.
 */
export interface SampledWaves extends EvenGrid {
  /** Largest difference found between grid and exact figures, as a share of each number's size there. */
  readonly interpolationError: number
}

/** Where to sample. `modeSpacingHz` is the least distance of two resonances. */
export interface SampledRange {
  readonly lowestHz: number
  readonly highestHz: number
  readonly modeSpacingHz: number
  readonly speedMPerS: number
}

const goodEnough = 1e-6
const mostNodes = 1000
const pointsPerSpacing = 12

/**
 * Samples a bore: exact figures at Chebyshev's points of √f (there the wall's losses are smooth down to the lowest
 * frequency), as many as the turning of the waves asks for, carried over to the even grid and checked in between.
 *
 * @example sampleWaves(waves, { lowestHz: 6, highestHz: 2000, modeSpacingHz: 120, speedMPerS: 345 })
 */
export function sampleWaves(waves: BoreWaves, range: SampledRange): SampledWaves {
  const turns = (2 * Math.PI * range.highestHz * waves.longerPartM) / range.speedMPerS
  let nodes = Math.ceil(turns + 5 * Math.cbrt(turns) + 8)
  let sampled = sampleAt(waves, range, nodes)
  while (sampled.interpolationError > goodEnough && nodes < mostNodes) {
    nodes = Math.ceil(nodes * 1.4)
    const denser = sampleAt(waves, range, nodes)
    if (!(denser.interpolationError < sampled.interpolationError / 2)) break
    sampled = denser
  }
  return sampled
}

function sampleAt(waves: BoreWaves, range: SampledRange, nodes: number): SampledWaves {
  const low = Math.sqrt(range.lowestHz)
  const high = Math.sqrt(range.highestHz)
  const points = Float64Array.from(
    { length: nodes },
    (_, j) => (low + high) / 2 - ((high - low) / 2) * Math.cos((Math.PI * (j + 0.5)) / nodes),
  )
  const exact = new Float64Array(nodes * wavesWidth)
  for (let j = 0; j < nodes; j++) setWaves(waves, points[j]!, exact, j * wavesWidth)
  const count = Math.ceil(((high - low) * 2 * high * pointsPerSpacing) / range.modeSpacingHz) + fewestPoints
  const stepRootHz = (high - low) / (count - 1)
  const grid = {
    startRootHz: low,
    stepRootHz,
    count,
    width: wavesWidth,
    values: new Float64Array(count * wavesWidth),
  }
  carryToGrid(points, exact, grid)
  return { ...grid, interpolationError: errorBetween(waves, grid, sizesOf(exact)) }
}

/** Barycentric interpolation; the weights of Chebyshev's points of the first kind are (−1)^j sin((j + ½)π/n). */
function carryToGrid(points: Float64Array, exact: Float64Array, grid: EvenGrid): void {
  const nodes = points.length
  const columns = byColumn(exact, nodes)
  const alternating = Float64Array.from(
    points,
    (_, j) => (j % 2 === 0 ? 1 : -1) * Math.sin((Math.PI * (j + 0.5)) / nodes),
  )
  const weights = new Float64Array(nodes)
  for (let i = 0; i < grid.count; i++) {
    const rootHz = grid.startRootHz + i * grid.stepRootHz
    let sum = 0
    for (let j = 0; j < nodes; j++) {
      const distance = rootHz - points[j]!
      weights[j] = alternating[j]! / (distance === 0 ? 1e-14 * rootHz : distance)
      sum += weights[j]!
    }
    for (let k = 0; k < wavesWidth; k++)
      grid.values[i * wavesWidth + k] = dotColumn(weights, columns, k * nodes) / sum
  }
}

function byColumn(exact: Float64Array, nodes: number): Float64Array {
  const columns = new Float64Array(exact.length)
  for (let j = 0; j < nodes; j++)
    for (let k = 0; k < wavesWidth; k++) columns[k * nodes + j] = exact[j * wavesWidth + k]!
  return columns
}

function dotColumn(weights: Float64Array, columns: Float64Array, from: number): number {
  let sum = 0
  for (let j = 0; j < weights.length; j++) sum += weights[j]! * columns[from + j]!
  return sum
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

const checkedShares = [0, 0.013, 0.37, 0.71, 0.977]
/** A and C, B and D, p and U are never small at once: each is judged beside the pair. */
const partner = [2, 3, 0, 1, 5, 4]
const found = new Float64Array(wavesWidth)
const wanted = new Float64Array(wavesWidth)

function errorBetween(waves: BoreWaves, grid: EvenGrid, sizes: Float64Array): number {
  let worst = 0
  for (const share of checkedShares) {
    const rootHz = grid.startRootHz + (Math.floor(share * (grid.count - 1)) + 0.5) * grid.stepRootHz
    setWaves(waves, rootHz, wanted, 0)
    readGrid(grid, rootHz, found)
    for (let pair = 0; pair < sizes.length; pair++) {
      const apart = distance(found, wanted, pair)
      const here = Math.max(shareOf(wanted, pair, sizes), shareOf(wanted, partner[pair]!, sizes))
      if (!Number.isFinite(apart)) return Number.POSITIVE_INFINITY
      if (apart > 0) worst = Math.max(worst, apart / (sizes[pair]! * here))
    }
  }
  return worst
}

function distance(a: Float64Array, b: Float64Array, pair: number): number {
  return Math.hypot(a[2 * pair]! - b[2 * pair]!, a[2 * pair + 1]! - b[2 * pair + 1]!)
}

function shareOf(values: Float64Array, pair: number, sizes: Float64Array): number {
  const size = sizes[pair]!
  return size > 0 ? Math.hypot(values[2 * pair]!, values[2 * pair + 1]!) / size : 0
}
