import type { SlidePosition } from '../../valves/loop.ts'
import type { Design } from '../workbook.ts'
import type { Warning } from './warning.ts'

/** Slides that stand farther out than they can travel. */
export function slideWarnings(design: Design, at: string): readonly Warning[] {
  const ofLoops = design.loops.map(({ slide }, i) => [`${at}.loops[${i}].slide.outMm`, slide] as const)
  const all = [...ofLoops, [`${at}.mainSlide.outMm`, design.mainSlide] as const]
  return all.flatMap(([path, slide]) => (slide === undefined ? [] : beyondTravel(slide, path)))
}

function beyondTravel({ outMm, travelMm }: SlidePosition, path: string): readonly Warning[] {
  if (outMm <= travelMm) return []
  const found = `${outMm} mm out`
  const expected = `at most ${travelMm} mm, the slide’s travel`
  return [{ path, found, expected, message: `Found a slide ${found}; expected ${expected}.` }]
}
