import { type Bow, bowAcousticMm, bowTubeMm } from './bow.ts'
import { movingBows, returnBows, type SlideParts } from './slide.ts'

/** Where a slide's tube is, mm along the centre line. */
export interface SlideTube {
  /** The moving bows' curves, straight ends left out. */
  readonly bowsMm: number
  /** What those count for: less than `bowsMm` when bends are corrected. */
  readonly bowsCountedMm: number
  /** Everything but the straight ends, as counted. */
  readonly withoutEndsMm: number
  /** Number of straight ends: two for each moving bow. */
  readonly endCount: number
}

/**
 * Adds up everything in a loop but the straight ends of its bow, the slide at `outAtPitchMm`.
 * `corrected` says whether bends count by their mean acoustic length.
 *
 * @example slideTube(slide, false).withoutEndsMm
 */
export function slideTube(slide: SlideParts, corrected: boolean): SlideTube {
  const counted = (bow: Bow) => (corrected ? bowAcousticMm(bow, slide.boreDiameterMm) : bowTubeMm(bow))
  const moving = movingBows(slide)
  const bowsCountedMm = total(moving.map(counted))
  const legsMm = 2 * moving.length * (slide.outerLegMm + slide.outAtPitchMm)
  const valveMm = slide.knucklesMm + slide.passagesMm - slide.straightPassageMm
  return {
    bowsMm: total(moving.map(bowTubeMm)),
    bowsCountedMm,
    withoutEndsMm: valveMm + legsMm + bowsCountedMm + total(returnBows(slide).map(counted)),
    endCount: 2 * moving.length,
  }
}

/**
 * The straight end of each side of each bow that makes the loop `targetMm` long, mm. Negative when the other
 * parts are already longer than the loop.
 *
 * @example straightEndMm(slide, 162.9, false)
 */
export function straightEndMm(slide: SlideParts, targetMm: number, corrected: boolean): number {
  const tube = slideTube(slide, corrected)
  return (targetMm - tube.withoutEndsMm) / tube.endCount
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0)
}
