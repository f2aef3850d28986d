import type { Cut } from './cuts.ts'
import type { SizedSlide } from './sizeSlide.ts'
import type { SlideProblem } from './slideProblems.ts'

/** A sized slide as the headless command writes it, apart from its id. Lengths in mm, unrounded. */
export interface SlideRecord {
  readonly targetMm: number
  readonly bowMm: number
  readonly straightEndMm: number
  readonly innerLegMm: number
  readonly engagedAtTravelMm: number
  readonly centsPerMmOut: number
  readonly massG: number
  readonly cuts: readonly Cut[]
  /** Worst case, flat end first. */
  readonly rangeCents: readonly [low: number, high: number]
  readonly problems: readonly SlideProblem[]
}

/**
 * The headless record of a slide.
 *
 * @example slideRecord(sized).rangeCents // [-0.29, 0.29]
 */
export function slideRecord(sized: SizedSlide): SlideRecord {
  return {
    targetMm: sized.targetMm,
    bowMm: sized.bowMm,
    straightEndMm: sized.straightEndMm,
    innerLegMm: sized.innerLegMm,
    engagedAtTravelMm: sized.engagedAtTravelMm,
    centsPerMmOut: sized.centsPerMmOut,
    massG: sized.massG,
    cuts: sized.cuts,
    rangeCents: sized.range.worstCents,
    problems: sized.problems,
  }
}
