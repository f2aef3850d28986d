import type { Body } from './body.ts'
import { impedanceAt } from './inputImpedance.ts'
import { accepted, type BoreResult, refused } from './refusal.ts'
import { type Route, setImpedance } from './route.ts'
import { routeThrough } from './routeThrough.ts'
import type { Insert } from './section.ts'

/** Weights of the harmonics 1, 2, 3 … of a played note when none are given. */
export const equalWeights: readonly number[] = [1, 1, 1, 1, 1, 1]

/** Where a note around a resonance would settle. */
export interface PlayingPitch {
  /** The resonance it was looked for around. */
  readonly peakHz: number
  /** Maximum of the weighted sum; `null` when there is none within 80 cents. */
  readonly hz: number | null
}

const reachCents = 80
const stepCents = 4

function weightsProblem(weights: readonly number[]) {
  const bad = weights.findIndex((weight) => !(weight >= 0 && weight <= 1e6))
  if (bad >= 0) return refused(`weights[${bad}]`, weights[bad], 'a weight of 0 or more')
  if (weights.length > 40) return refused('weights', weights.length, 'at most 40 weights')
  const sum = weights.reduce((total, weight) => total + weight, 0)
  return sum > 0 ? undefined : refused('weights', sum, 'at least one weight above 0')
}

/**
 * Weighted mean of Re Z at the harmonics of each frequency, Pa·s/m³: Wogram, Ein Beitrag zur Ermittlung der Stimmung
 * von Blechblasinstrumenten (Braunschweig 1972). `weights[n − 1]` belongs to harmonic n.
 *
 * @example harmonicSum(body, [], [230, 233, 236], equalWeights)
 */
export function harmonicSum(
  body: Body,
  inserts: readonly Insert[],
  frequenciesHz: readonly number[],
  weights: readonly number[] = equalWeights,
): BoreResult<readonly number[]> {
  const problem = weightsProblem(weights)
  if (problem !== undefined) return problem
  const total = weights.reduce((sum, weight) => sum + weight, 0)
  const harmonics = frequenciesHz.flatMap((hz) => weights.map((_, n) => (n + 1) * hz))
  const curve = impedanceAt(body, inserts, harmonics)
  if (!curve.ok) return curve
  return accepted(
    frequenciesHz.map(
      (_, i) =>
        weights.reduce((sum, weight, n) => sum + weight * curve.value.re[i * weights.length + n]!, 0) / total,
    ),
  )
}

/** The weighted sum over a range of frequencies, evenly spread, Pa·s/m³. */
export interface HarmonicSumCurve {
  readonly hz: Float64Array
  readonly sum: Float64Array
}

/**
 * The weighted sum for drawing: as `harmonicSum`, but read from the body's samples as far as they reach.
 *
 * @example harmonicSumCurve(body, [], { lowestHz: 100, highestHz: 900, count: 1000 }, equalWeights)
 */
export function harmonicSumCurve(
  body: Body,
  inserts: readonly Insert[],
  range: { readonly lowestHz: number; readonly highestHz: number; readonly count: number },
  weights: readonly number[] = equalWeights,
): BoreResult<HarmonicSumCurve> {
  const { lowestHz, highestHz, count } = range
  if (!Number.isInteger(count) || count < 2 || count > 1e6)
    return refused('count', count, 'a whole number from 2 to 1000000')
  if (!(lowestHz >= body.lowestHz && highestHz > lowestHz && highestHz <= body.highestHz))
    return refused(
      'highestHz',
      `${lowestHz} to ${highestHz} Hz`,
      `frequencies from ${body.lowestHz} to ${body.highestHz} Hz`,
    )
  const sum = sumReader(body, inserts, weights)
  if (!sum.ok) return sum
  const total = weights.reduce((all, weight) => all + weight, 0)
  const curve = { hz: new Float64Array(count), sum: new Float64Array(count) }
  for (let i = 0; i < count; i++) {
    curve.hz[i] = lowestHz + ((highestHz - lowestHz) * i) / (count - 1)
    curve.sum[i] = sum.value(curve.hz[i]!) / total
  }
  return accepted(curve)
}

/**
 * Playing pitches by the weighted sum: its maximum within 80 cents of each resonance. Players sit somewhat above the
 * peak, so intervals between fingerings are worth more than these figures themselves.
 *
 * @example playingPitches(body, [], peaks.map(({ hz }) => hz), equalWeights)
 */
export function playingPitches(
  body: Body,
  inserts: readonly Insert[],
  peaksHz: readonly number[],
  weights: readonly number[] = equalWeights,
): BoreResult<readonly PlayingPitch[]> {
  const sum = sumReader(body, inserts, weights)
  if (!sum.ok) return sum
  return accepted(peaksHz.map((peakHz) => ({ peakHz, hz: maximumNear(sum.value, peakHz) })))
}

/** Reads the weighted sum, not yet divided, at any frequency: from the samples where there are some. */
function sumReader(
  body: Body,
  inserts: readonly Insert[],
  weights: readonly number[],
): BoreResult<(hz: number) => number> {
  const problem = weightsProblem(weights)
  if (problem !== undefined) return problem
  const route = routeThrough(body, inserts)
  if (!route.ok) return route
  const beyond = (hz: number) => {
    const exact = impedanceAt(body, inserts, [hz])
    return exact.ok ? exact.value.re[0]! : 0
  }
  return accepted((hz) => sumAt(route.value, body.highestHz, beyond, hz, weights))
}

const pair = new Float64Array(2)

function sumAt(
  route: Route,
  highestHz: number,
  beyond: (hz: number) => number,
  hz: number,
  weights: readonly number[],
): number {
  let sum = 0
  for (let n = 0; n < weights.length; n++) {
    const harmonicHz = (n + 1) * hz
    if (weights[n] === 0) continue
    if (harmonicHz > highestHz) {
      sum += weights[n]! * beyond(harmonicHz)
    } else {
      setImpedance(route, Math.sqrt(harmonicHz), pair, 0)
      sum += weights[n]! * pair[0]!
    }
  }
  return sum
}

/** The highest maximum of the steps, by the parabola through its three points, twice. */
function maximumNear(sum: (hz: number) => number, peakHz: number): number | null {
  const at = (cents: number) => sum(peakHz * 2 ** (cents / 1200))
  const count = (2 * reachCents) / stepCents
  const values = Array.from({ length: count + 1 }, (_, i) => at(i * stepCents - reachCents))
  let best = -1
  for (let i = 1; i < count; i++) {
    const top = values[i]! >= values[i - 1]! && values[i]! > values[i + 1]!
    if (top && (best < 0 || values[i]! > values[best]!)) best = i
  }
  if (best < 0) return null
  const near = best * stepCents - reachCents
  const closer = near + vertex(values[best - 1]!, values[best]!, values[best + 1]!) * stepCents
  const arm = stepCents / 8
  const cents = closer + vertex(at(closer - arm), at(closer), at(closer + arm)) * arm
  return peakHz * 2 ** (cents / 1200)
}

/** Place of the vertex in steps from the middle one; 0 where the three lie on a line. */
function vertex(before: number, middle: number, after: number): number {
  const bend = before - 2 * middle + after
  return bend < 0 ? Math.max(-1, Math.min(1, (before - after) / (2 * bend))) : 0
}
