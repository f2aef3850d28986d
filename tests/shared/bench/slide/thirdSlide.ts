import type { SlideJob } from '#shared/bench/slide/slide.ts'

/** A third slide with its legs 38 mm apart, on an instrument 1400 mm long. */
export const thirdSlide: SlideJob = {
  targetMm: 265,
  routeLengthMm: 1665,
  legSpacingMm: 38,
  outerLegMm: 60,
  knucklesMm: 22,
  passagesMm: 31,
  straightPassageMm: 14,
  boreDiameterMm: 17.2,
  wallMm: 0.5,
  outAtPitchMm: 6,
  travelMm: 30,
  stopGapMm: 1,
  leastEngagedMm: 20,
  trimMm: 2,
  densityGPerCm3: 8.53,
  bendCorrection: false,
  toleranceMm: 0.5,
}
