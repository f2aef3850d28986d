import { centsBetween } from '../pitch/cents.ts'

/** What is not known exactly about a route. A figure that is absent is taken as exact. */
export interface Doubts {
  /** ± mm of tube, one for the body and one for each loop that lies in the route. */
  readonly tubeTolerancesMm?: readonly number[]
  /** Speeds of sound at the coldest, mean and warmest air expected, m/s. */
  readonly speedsOfSound?: readonly [coldest: number, mean: number, warmest: number]
  /** ± cents of the tuner and of whoever plays. */
  readonly readingErrorCents?: number
}

/** Cents about the nominal pitch, flat end first. */
export interface CentsRange {
  /** Everything off in the same direction at once. */
  readonly worstCents: readonly [low: number, high: number]
  /** Independent causes: the root of the sum of squares of each cause's own flat end, and sharp end. */
  readonly rootSumSquareCents: readonly [low: number, high: number]
}

/**
 * How far tolerances can take the pitch of a route of `routeLengthMm` (tube, above 0), in cents. Tolerances are
 * at least 0 and their sum stays below the route. A route that its tolerances could use up throws.
 *
 * @example routeDoubt(3000, { tubeTolerancesMm: [3, 1] }).worstCents // [-2.31, 2.31]
 */
export function routeDoubt(routeLengthMm: number, doubts: Doubts): CentsRange {
  const tolerances = doubts.tubeTolerancesMm ?? []
  const sumMm = tolerances.reduce((sum, toleranceMm) => sum + toleranceMm, 0)
  if (!(routeLengthMm > sumMm)) throw new RangeError('A route must be longer than its tolerances')
  const [coldest, mean, warmest] = doubts.speedsOfSound ?? [1, 1, 1]
  const other: readonly [number, number][] = [
    [centsBetween(mean, coldest), centsBetween(mean, warmest)],
    [-(doubts.readingErrorCents ?? 0), doubts.readingErrorCents ?? 0],
  ]
  const each = tolerances.map((toleranceMm) => tubeCents(routeLengthMm, toleranceMm))
  return {
    worstCents: addEnds([tubeCents(routeLengthMm, sumMm), ...other]),
    rootSumSquareCents: rootSumSquare([...each, ...other]),
  }
}

/** Flat and sharp end of a route that may be longer or shorter by `toleranceMm`. */
function tubeCents(routeLengthMm: number, toleranceMm: number): [number, number] {
  return [
    centsBetween(routeLengthMm + toleranceMm, routeLengthMm),
    centsBetween(routeLengthMm - toleranceMm, routeLengthMm),
  ]
}

function addEnds(ends: readonly (readonly [number, number])[]): [number, number] {
  return ends.reduce<[number, number]>(([low, high], end) => [low + end[0], high + end[1]], [0, 0])
}

function rootSumSquare(ends: readonly (readonly [number, number])[]): [number, number] {
  const root = (side: 0 | 1) => Math.sqrt(ends.reduce((sum, end) => sum + end[side] ** 2, 0))
  return [0 - root(0), root(1)]
}
