import { benchFigure, benchMm } from '../figures.ts'
import type { FittedLoop } from './readingsFit.ts'

/**
 * What a fitted loop asks for, in a sentence that keeps tube and movement apart. `name` starts the sentence. A loop
 * with no target says only how long it is. Where the length wanted is not the one that is exact for the loop's own
 * fingering, that one is told too.
 *
 * @example loopSentence('Loop 3', loop) // 'Loop 3 is 6.4 ± 1.2 mm of tube short: move its slide out 3.2 mm, or cut the new loop to 265.0 mm of tube.'
 */
export function loopSentence(name: string, loop: FittedLoop): string {
  const { value, standardError, targetMm, changeMm, movementMm, changeStandardErrorMm } = loop
  if (targetMm === null || changeMm === null || movementMm === null || changeStandardErrorMm === null)
    return `${name} is ${benchFigure(value)} ± ${benchFigure(standardError)} mm of tube.`
  const [state, way] = changeMm < 0 ? ['long', 'in'] : ['short', 'out']
  const off = `${benchFigure(Math.abs(changeMm))} ± ${benchFigure(changeStandardErrorMm)} mm of tube ${state}`
  const move = `move its slide ${way} ${benchMm(Math.abs(movementMm))}, or cut the new loop to ${benchMm(targetMm)} of tube.`
  return `${name} is ${off}: ${move}${exactSentence(loop)}`
}

function exactSentence({ targetMm, exactMm }: FittedLoop): string {
  if (targetMm === null || exactMm === null || benchMm(exactMm) === benchMm(targetMm)) return ''
  return ` Exact for its own fingering it would be ${benchMm(exactMm)}.`
}
