import type { SlidePosition } from '../../valves/loop.ts'
import { benchFigure, benchMm } from '../figures.ts'
import type { FittedLoop } from './readingsFit.ts'

/**
 * What a fitted loop asks for, in a sentence that keeps tube and movement apart. `name` starts the sentence. A loop
 * with no target says only how long it is. A slide whose place is known is not asked for more than it can do: what it
 * leaves over is told, in tube. Where the length wanted is not the one that is exact for the loop's own fingering,
 * that one is told too.
 *
 * @example loopSentence('Loop 3', loop) // 'Loop 3 is 6.4 ± 1.2 mm of tube short: move its slide out 3.2 mm, or cut the new loop to 265.0 mm of tube, first cut 267.4 mm.'
 */
export function loopSentence(name: string, loop: FittedLoop, slide?: SlidePosition): string {
  const { value, standardError, targetMm, changeMm, changeStandardErrorMm, firstCutMm } = loop
  if (targetMm === null || changeMm === null || changeStandardErrorMm === null || firstCutMm === null)
    return `${name} is ${benchFigure(value)} ± ${benchFigure(standardError)} mm of tube.`
  const state = changeMm < 0 ? 'long' : 'short'
  const off = `${benchFigure(Math.abs(changeMm))} ± ${benchFigure(changeStandardErrorMm)} mm of tube ${state}`
  const move = moveWords(changeMm, firstCutMm - targetMm, slide)
  const cut = `cut the new loop to ${benchMm(targetMm)} of tube, first cut ${benchMm(firstCutMm)}`
  return `${name} is ${off}: ${move}, or ${cut}.${exactSentence(loop)}`
}

/** What the slide is to do; tube to take off that is left over is given short by `spareMm` at first. */
function moveWords(changeMm: number, spareMm: number, slide: SlidePosition | undefined): string {
  const way = changeMm < 0 ? 'in' : 'out'
  const wantedMm = Math.abs(changeMm) / 2
  const canMm = slide === undefined ? wantedMm : reachMm(slide, way)
  const leftMm = 2 * (wantedMm - canMm)
  if (leftMm < 0.05) return `move its slide ${way} ${benchMm(wantedMm)}`
  const rest = changeMm < 0 ? takeOffWords(leftMm, spareMm) : `add the ${benchMm(leftMm)} of tube left over`
  if (canMm < 0.05) return `its slide is all the way ${way} already; ${rest}`
  return `move its slide ${way} the ${benchMm(canMm)} that it has and ${rest}`
}

/** Movement that a slide has left on one side. */
function reachMm({ outMm, travelMm }: SlidePosition, way: 'in' | 'out'): number {
  return Math.max(0, way === 'in' ? outMm : travelMm - outMm)
}

function takeOffWords(leftMm: number, spareMm: number): string {
  const off = `take off the ${benchMm(leftMm)} of tube left over`
  const sureMm = leftMm - spareMm
  return sureMm < 0.05 ? `${off}, which is too little to be sure of` : `${off}, at first ${benchMm(sureMm)}`
}

function exactSentence({ targetMm, exactMm }: FittedLoop): string {
  if (targetMm === null || exactMm === null || benchMm(exactMm) === benchMm(targetMm)) return ''
  return ` Exact for its own fingering it would be ${benchMm(exactMm)}.`
}
