import { ratioOfSemitones } from '#shared/pitch/cents.ts'
import type { LoopFreedom } from '#shared/solve/lengthProblem.ts'
import type { Loop } from '#shared/valves/loop.ts'
import type { Design } from '#shared/workbook/workbook.ts'

type Tie = Extract<LoopFreedom, { kind: 'tied' }>

/** A tie to start from: the main loop of the first of a loop's valves that has one, in the present proportion. */
export function suggestedTie(design: Design, loop: Loop): Tie {
  const others = design.loops.filter(({ id }) => id !== loop.id)
  const main = loop.pressed
    .map((valve) => others.find(({ pressed }) => pressed.length === 1 && pressed[0] === valve))
    .find((each) => each !== undefined)
  const to = main ?? others[0]
  if (to === undefined) throw new Error('A loop alone has none to be tied to.')
  return { kind: 'tied', to: to.id, factor: presentFactor(loop, to) }
}

/** Present length over that of another loop; 1 where either has none. */
export function presentFactor({ lengthMm }: Loop, to: Loop): number {
  return lengthMm > 0 && to.lengthMm > 0 ? lengthMm / to.lengthMm : 1
}

/**
 * The factor that keeps a compensating loop right whatever becomes of its main loop: `2^(k/12) − 1` behind valves
 * that drop k semitones. `null` for a loop that is not its main loop's own with further valves down.
 */
export function compensatingFactor({ valves }: Design, loop: Loop, to: Loop): number | null {
  const further = loop.pressed.filter((valve) => !to.pressed.includes(valve))
  if (further.length === 0 || !to.pressed.every((valve) => loop.pressed.includes(valve))) return null
  const semitones = further.reduce(
    (sum, valve) => sum + (valves.find(({ id }) => id === valve)?.semitones ?? 0),
    0,
  )
  return semitones > 0 ? ratioOfSemitones(semitones) - 1 : null
}
