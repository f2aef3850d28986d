import type { SlideJob } from '#shared/bench/slide/slide.ts'
import { thirdSlideParts } from '../../../fixtures/thirdSlideParts.ts'

/** A third slide with its legs 38 mm apart, on an instrument 1400 mm long. */
export const thirdSlide: SlideJob = { targetMm: 265, routeLengthMm: 1665, ...thirdSlideParts }
