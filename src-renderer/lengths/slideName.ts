import type { DerivedDesign } from '../state/derived.ts'
import { mainSlideId } from '../state/lengthsStore.ts'
import { lengthsNames } from '../words/lengths.ts'
import { loopName } from './refusalWords.ts'

/** A slide as it is called on the page and on the wall. */
export function slideName(derived: DerivedDesign, slideId: string): string {
  return slideId === mainSlideId ? lengthsNames.mainSlide : loopName(derived, slideId)
}
