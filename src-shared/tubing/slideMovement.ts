import { ratioOfCents } from '../pitch/cents.ts'

/**
 * Tube to add to a route so that an error goes to zero, mm of tube: `route·(2^(e/1200) − 1)`. Positive for a
 * sharp route, negative (tube to remove) for a flat one.
 *
 * @example tubeForCentsMm(2000, 10) // 11.59
 */
export function tubeForCentsMm(routeMm: number, errorCents: number): number {
  return routeMm * (ratioOfCents(errorCents) - 1)
}

/**
 * Slide movement for an error, mm out (not tube): half the tube, for a slide has two legs. Negative: push in.
 *
 * @example slideMovementMm(2000, 10) // 5.79
 */
export function slideMovementMm(routeMm: number, errorCents: number): number {
  return tubeForCentsMm(routeMm, errorCents) / 2
}
