import type { Loop } from '../../valves/loop.ts'
import type { Design } from '../workbook.ts'
import type { Warning } from './warning.ts'

/** Slides that stand farther out than their loops are long: a loop's length holds both legs of what its slide is out. */
export function slideInLoopWarnings(design: Design, at: string): readonly Warning[] {
  return design.loops.flatMap((loop, i) => longerThanLoop(loop, `${at}.loops[${i}].slide.outMm`))
}

function longerThanLoop({ lengthMm, slide }: Loop, path: string): readonly Warning[] {
  if (slide === undefined || 2 * slide.outMm <= lengthMm) return []
  const found = `${slide.outMm} mm out, ${(2 * slide.outMm).toFixed(1)} mm of tube`
  const expected = `at most half of the ${lengthMm.toFixed(1)} mm that the loop has`
  const isLikely = slide.outMm <= lengthMm
  const question = isLikely ? ': is the loop’s length that of one leg, or the slide’s that of both?' : '.'
  return [{ path, found, expected, message: `Found a slide ${found}; expected ${expected}${question}` }]
}
