import { centsBetween, ratioOfSemitones } from '../pitch/cents.ts'

/**
 * Route length that sounds exactly `semitones` below the open instrument, mm: `L·2^(k/12)`.
 *
 * @example requiredLengthMm(2000, 12) // 4000
 */
export function requiredLengthMm(openLengthMm: number, semitones: number): number {
  return openLengthMm * ratioOfSemitones(semitones)
}

/**
 * Loop that lowers the open instrument by exactly `semitones` when it is used alone, mm of tube:
 * `L·(2^(k/12) − 1)`. Negative for a negative drop.
 *
 * @example loopForDropMm(2000, 2) // 244.92…
 */
export function loopForDropMm(openLengthMm: number, semitones: number): number {
  return requiredLengthMm(openLengthMm, semitones) - openLengthMm
}

/**
 * Compensating loop that makes two valves pressed together exact, mm of tube: what the pair needs less what
 * their own loops give.
 *
 * @example compensatingLoopMm(2000, 2, 244.924, 5, 669.68) // 82.01…
 */
export function compensatingLoopMm(
  openLengthMm: number,
  firstSemitones: number,
  firstLoopMm: number,
  secondSemitones: number,
  secondLoopMm: number,
): number {
  return loopForDropMm(openLengthMm, firstSemitones + secondSemitones) - firstLoopMm - secondLoopMm
}

/**
 * The drop of a loop used alone, in cents: how far it lowers an open route of `openLengthMm`.
 *
 * @example dropOfLoopCents(2000, 244.924) // 200.0
 */
export function dropOfLoopCents(openLengthMm: number, loopMm: number): number {
  return centsBetween(openLengthMm, openLengthMm + loopMm)
}

/**
 * Error of a route against the length it should have, in cents, positive when the route is short and so sharp.
 *
 * @example routeErrorCents(2828.43, 2742.26) // 53.6
 */
export function routeErrorCents(requiredMm: number, routeMm: number): number {
  return centsBetween(routeMm, requiredMm)
}
