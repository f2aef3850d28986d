import type { Bow } from './bow.ts'

/** Two more legs and a bow beyond the first pair, for a slide that doubles back. */
export interface FurtherPair {
  /** Spacing of the fixed bow that leads from the pair before to this one, mm. */
  readonly returnSpacingMm: number
  readonly legSpacingMm: number
  readonly quarterRadiiMm?: readonly [number, number]
}

/**
 * How a valve slide is made up. Everything is along the centre line, mm; `outAtPitchMm` and `travelMm` are
 * movement of the slide, so tube is twice as much for each pair of legs.
 */
export interface SlideParts {
  readonly legSpacingMm: number
  /** For a bow of two quarter bends with a piece across. Half a circle when absent. */
  readonly quarterRadiiMm?: readonly [number, number]
  /** Pairs that move together with the first; none when absent. */
  readonly furtherPairs?: readonly FurtherPair[]
  /** Each outer tube. */
  readonly outerLegMm: number
  /** Both knuckles together. */
  readonly knucklesMm: number
  /** Both passages through the valve when it is down, together. */
  readonly passagesMm: number
  /** The passage that they replace when it is up. */
  readonly straightPassageMm: number
  readonly boreDiameterMm: number
  readonly wallMm: number
  readonly outAtPitchMm: number
  /** Farthest movement out. */
  readonly travelMm: number
  /** What an inner leg is short of its outer leg, so that the slide closes on its ferrules. */
  readonly stopGapMm: number
  /** What must stay inside at full travel. */
  readonly leastEngagedMm: number
  /** Count each bend by its mean acoustic length instead of its centre line. */
  readonly bendCorrection: boolean
}

/** A slide to be made for a loop. */
export interface SlideJob extends SlideParts {
  /** The loop's length wanted, mm of tube, with the slide at `outAtPitchMm`. */
  readonly targetMm: number
  /** The route in which the slide is played: open length, this loop at its target and what else lies in it, mm. */
  readonly routeLengthMm: number
  /** What a first cut leaves over on a piece, mm. */
  readonly trimMm: number
  readonly densityGPerCm3: number
  /** ± mm of tube on the whole loop. */
  readonly toleranceMm: number
  /** ± mm on single dimensions, where the shop wants the range by parts instead of `toleranceMm`. */
  readonly partTolerancesMm?: PartTolerances
  /** Centre-line radius of a one-piece bow at hand that is to be used, mm. */
  readonly bowAtHandRadiusMm?: number
}

/** ± mm on each dimension as it is measured or made; one that is absent is exact. */
export interface PartTolerances {
  readonly legSpacingMm?: number
  readonly outerLegMm?: number
  readonly knucklesMm?: number
  readonly passagesMm?: number
  readonly straightPassageMm?: number
  readonly outAtPitchMm?: number
  readonly straightEndMm?: number
}

/**
 * Common starting points of the trade, for a new slide. Not facts: every one is the user's to change. Density is
 * that of 70/30 brass.
 */
export const slideDefaults = {
  outAtPitchMm: 6,
  travelMm: 30,
  stopGapMm: 1,
  leastEngagedMm: 20,
  wallMm: 0.5,
  trimMm: 2,
  densityGPerCm3: 8.53,
  bendCorrection: false,
  toleranceMm: 0.5,
} as const

/** The bows that move, in the order of the air. */
export function movingBows(slide: SlideParts): readonly Bow[] {
  return [slide, ...(slide.furtherPairs ?? [])].map(({ legSpacingMm, quarterRadiiMm }) =>
    quarterRadiiMm === undefined ? { legSpacingMm } : { legSpacingMm, quarterRadiiMm },
  )
}

/** The fixed bows of a slide that doubles back, in the order of the air. */
export function returnBows(slide: SlideParts): readonly Bow[] {
  return (slide.furtherPairs ?? []).map((pair) => ({ legSpacingMm: pair.returnSpacingMm }))
}

/** Outer diameter of the inner tube, mm: bore and two walls. */
export function innerTubeDiameterMm(slide: Pick<SlideParts, 'boreDiameterMm' | 'wallMm'>): number {
  return slide.boreDiameterMm + 2 * slide.wallMm
}

/** Outer diameter of the outer tube, mm: the inner tube and two walls. The fit's few hundredths are left out. */
export function outerTubeDiameterMm(slide: Pick<SlideParts, 'boreDiameterMm' | 'wallMm'>): number {
  return slide.boreDiameterMm + 4 * slide.wallMm
}
