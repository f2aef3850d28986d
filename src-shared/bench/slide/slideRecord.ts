import type { SizedSlide } from './sizeSlide.ts'

/** What a sized slide holds for the window alone, or for the record in another form. */
type NotWritten = 'kind' | 'job' | 'unit' | 'bowWithEndsMm' | 'range' | 'bend'

/** A sized slide as the headless command writes it, apart from its id. Lengths in mm, unrounded. */
export interface SlideRecord extends Omit<SizedSlide, NotWritten> {
  /** Worst case, flat end first. */
  readonly rangeCents: readonly [low: number, high: number]
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
