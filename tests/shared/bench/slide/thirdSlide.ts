import { type SizedSlide, sizeSlide } from '#shared/bench/slide/sizeSlide.ts'
import type { SlideJob } from '#shared/bench/slide/slide.ts'
import { thirdSlideParts } from '../../../fixtures/thirdSlideParts.ts'

/** A third slide with its legs 38 mm apart, on an instrument 1400 mm long. */
export const thirdSlide: SlideJob = { targetMm: 265, routeLengthMm: 1665, ...thirdSlideParts }

/** The third slide with other parts, sized; throws when it is refused. */
export function sized(change: Partial<SlideJob> = {}): SizedSlide {
  const answer = sizeSlide({ ...thirdSlide, ...change })
  if (answer.kind !== 'sized') throw new Error(answer.findings[0]?.message)
  return answer
}
