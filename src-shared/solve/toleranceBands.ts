import { centsBetween } from '../pitch/cents.ts'

/** A fingering as it was designed, with the loops that lie in its route. */
export interface DesignedRoute {
  readonly name: string
  readonly loops: readonly string[]
  readonly routeLengthMm: number
  /** Its error as designed, positive sharp. */
  readonly errorCents: number
}

/** How exactly the parts are made, ± mm of tube. A loop that is not named is exact. */
export interface MadeWithin {
  readonly bodyMm: number
  readonly loopsMm: Readonly<Record<string, number>>
}

/** What the temperatures played in do to the whole instrument, cents; the lowest at the coldest. */
export interface TemperatureEffect {
  readonly lowestCents: number
  readonly highestCents: number
}

/** From the flattest to the sharpest, cents, sharp positive. */
export interface CentsBand {
  readonly lowestCents: number
  readonly highestCents: number
}

/** Where a fingering may come to lie. */
export interface ToleranceBand {
  readonly name: string
  /** Every doubt at its end at once; exact. */
  readonly worstCase: CentsBand
  /**
   * Doubts independent of each other: each part's effect, half the temperature's and the reading's error, root of the
   * sum of squares.
   */
  readonly rootSumSquare: CentsBand
}

const noTemperature: TemperatureEffect = { lowestCents: 0, highestCents: 0 }

/**
 * The bands that making, temperature and readings put around each fingering's error. Tolerances must be finite, at least
 * 0 and together shorter than the route; throws otherwise, for they are checked where they are typed.
 *
 * @param readingErrorCents how far off either way the tuner was that the lengths come from, finite and at least 0
 * @example toleranceBands(routes, { bodyMm: 2, loopsMm: { L1: 0.5 } }, { lowestCents: -15, highestCents: 15 })
 */
export function toleranceBands(
  routes: readonly DesignedRoute[],
  made: MadeWithin,
  temperature: TemperatureEffect = noTemperature,
  readingErrorCents = 0,
): readonly ToleranceBand[] {
  checkReadingError(readingErrorCents)
  return routes.map((route) => {
    const parts = tolerancesIn(route, made)
    return {
      name: route.name,
      worstCase: worstCase(route, sumOf(parts), temperature, readingErrorCents),
      rootSumSquare: rootSumSquare(route, parts, temperature, readingErrorCents),
    }
  })
}

/** Throws for an error of readings that is none: not finite, or below 0. */
export function checkReadingError(readingErrorCents: number): void {
  if (Number.isFinite(readingErrorCents) && readingErrorCents >= 0) return
  throw new RangeError(`No reading is ${readingErrorCents} cents off.`)
}

/**
 * The tolerances of the parts that lie in a route, ± mm of tube: the body's, then its loops'.
 *
 * @example tolerancesIn(route, { bodyMm: 2, loopsMm: { L1: 0.5 } }) // [2, 0.5]
 */
export function tolerancesIn(route: DesignedRoute, made: MadeWithin): readonly number[] {
  const parts = [made.bodyMm, ...route.loops.map((id) => made.loopsMm[id] ?? 0)]
  const sound = parts.every((part) => Number.isFinite(part) && part >= 0)
  if (!sound || sumOf(parts) >= route.routeLengthMm) {
    throw new RangeError(`Tolerances of ${parts.join(', ')} mm do not suit the route of ${route.name}.`)
  }
  return parts
}

function worstCase(
  route: DesignedRoute,
  wholeMm: number,
  temperature: TemperatureEffect,
  readingErrorCents: number,
): CentsBand {
  const { routeLengthMm, errorCents } = route
  const flatter = centsBetween(routeLengthMm, routeLengthMm + wholeMm)
  const sharper = centsBetween(routeLengthMm - wholeMm, routeLengthMm)
  return {
    lowestCents: errorCents - flatter + temperature.lowestCents - readingErrorCents,
    highestCents: errorCents + sharper + temperature.highestCents + readingErrorCents,
  }
}

function rootSumSquare(
  route: DesignedRoute,
  parts: readonly number[],
  temperature: TemperatureEffect,
  readingErrorCents: number,
): CentsBand {
  const middle = route.errorCents + (temperature.lowestCents + temperature.highestCents) / 2
  const temperatureHalf = (temperature.highestCents - temperature.lowestCents) / 2
  const half = Math.hypot(
    temperatureHalf,
    readingErrorCents,
    ...parts.map((part) => part * centsPerMm(route)),
  )
  return { lowestCents: middle - half, highestCents: middle + half }
}

/**
 * Cents a millimetre of tube is worth in a route, for small changes.
 *
 * @example centsPerMm({ name: '0', loops: [], routeLengthMm: 2000, errorCents: 0 }) // 0.866
 */
export function centsPerMm(route: DesignedRoute): number {
  return 1200 / Math.LN2 / route.routeLengthMm
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0)
}
