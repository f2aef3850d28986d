import { ratioOfCents } from '../pitch/cents.ts'
import {
  centsPerMm,
  checkReadingError,
  type DesignedRoute,
  type MadeWithin,
  type TemperatureEffect,
  tolerancesIn,
} from './toleranceBands.ts'

/**
 * How exactly the parts must be made: every tolerance at `shareOfGiven` times the one given. `unlimited` when no
 * part with a tolerance lies in a chosen route; `none` when `fingering` is outside even with exact parts.
 */
export type ToleranceNeeded =
  | { readonly kind: 'found'; readonly shareOfGiven: number; readonly fingering: string }
  | { readonly kind: 'unlimited' }
  | { readonly kind: 'none'; readonly fingering: string; readonly outsideByCents: number }

/** The tolerance needed when every part is at its worst at once, and when their doubts add as squares. */
export interface TolerancesNeeded {
  readonly worstCase: ToleranceNeeded
  readonly rootSumSquare: ToleranceNeeded
}

/**
 * The tolerance that keeps every chosen fingering within ± `withinCents`, named with the fingering that sets it.
 * `pattern` says how the parts' tolerances stand to each other; give 1 for each part to have the answer in mm. What
 * temperature and readings are off already leaves so much less for the parts; both are as in `toleranceBands`.
 *
 * @example toleranceNeeded(routes, { bodyMm: 1, loopsMm: { L1: 1 } }, 10).worstCase
 */
export function toleranceNeeded(
  chosen: readonly DesignedRoute[],
  pattern: MadeWithin,
  withinCents: number,
  temperature: TemperatureEffect = { lowestCents: 0, highestCents: 0 },
  readingErrorCents = 0,
): TolerancesNeeded {
  checkReadingError(readingErrorCents)
  const worstCase = (route: DesignedRoute): RouteNeed =>
    worstCaseShare(route, pattern, withinCents - readingErrorCents, temperature)
  const rootSumSquare = (route: DesignedRoute): RouteNeed =>
    rootSumSquareShare(route, pattern, withinCents, temperature, readingErrorCents)
  return { worstCase: tightest(chosen, worstCase), rootSumSquare: tightest(chosen, rootSumSquare) }
}

/** A share of the pattern, or the cents by which an exact part is already outside. */
type RouteNeed = { readonly share: number } | { readonly outsideByCents: number }

function tightest(
  chosen: readonly DesignedRoute[],
  needOf: (route: DesignedRoute) => RouteNeed,
): ToleranceNeeded {
  let found: ToleranceNeeded = { kind: 'unlimited' }
  for (const route of chosen) {
    const need = needOf(route)
    const fingering = route.name
    if ('outsideByCents' in need) {
      const { outsideByCents } = need
      if (found.kind !== 'none' || outsideByCents > found.outsideByCents) {
        found = { kind: 'none', fingering, outsideByCents }
      }
    } else if (found.kind !== 'none' && Number.isFinite(need.share)) {
      const before = found.kind === 'found' ? found.shareOfGiven : Number.POSITIVE_INFINITY
      if (need.share < before) found = { kind: 'found', shareOfGiven: need.share, fingering }
    }
  }
  return found
}

function worstCaseShare(
  route: DesignedRoute,
  pattern: MadeWithin,
  withinCents: number,
  temperature: TemperatureEffect,
): RouteNeed {
  const sharpRoom = withinCents - route.errorCents - temperature.highestCents
  const flatRoom = withinCents + route.errorCents + temperature.lowestCents
  const room = Math.min(sharpRoom, flatRoom)
  if (room < 0) return { outsideByCents: -room }
  const whole = partsOf(route, pattern).reduce((sum, part) => sum + part, 0)
  const shorter = route.routeLengthMm * (1 - ratioOfCents(-sharpRoom))
  const longer = route.routeLengthMm * (ratioOfCents(flatRoom) - 1)
  return { share: over(Math.min(shorter, longer), whole) }
}

function rootSumSquareShare(
  route: DesignedRoute,
  pattern: MadeWithin,
  withinCents: number,
  temperature: TemperatureEffect,
  readingErrorCents: number,
): RouteNeed {
  const middle = route.errorCents + (temperature.lowestCents + temperature.highestCents) / 2
  const temperatureHalf = (temperature.highestCents - temperature.lowestCents) / 2
  const withoutParts = Math.hypot(temperatureHalf, readingErrorCents)
  const half = withinCents - Math.abs(middle)
  if (half < withoutParts) return { outsideByCents: withoutParts - half }
  const whole = Math.hypot(...partsOf(route, pattern)) * centsPerMm(route)
  return { share: over(Math.sqrt(half ** 2 - withoutParts ** 2), whole) }
}

/** The pattern only states proportions, so it is brought to a size that any route holds. */
function partsOf(route: DesignedRoute, pattern: MadeWithin): readonly number[] {
  return tolerancesIn({ ...route, routeLengthMm: Number.POSITIVE_INFINITY }, pattern)
}

function over(room: number, whole: number): number {
  return whole === 0 ? Number.POSITIVE_INFINITY : room / whole
}
