import { prepareBody } from '../bore/body.ts'
import { accepted, type BoreResult, refused } from '../bore/refusal.ts'
import { resonancesOf } from '../bore/resonances.ts'
import type { LengthProblem } from '../solve/lengthProblem.ts'
import { refusal } from '../solve/lengthRefusal.ts'
import type { SoundedNote, Sounding, TrialLengths } from '../solve/sounding.ts'
import { type BoreInput, valvesDiameterMm } from './boreInput.ts'
import { type HeardBore, soundRow } from './soundedRow.ts'

/**
 * A design's bore as the solver of lengths takes it: a note for each fingering and each mode that the bore aims at. Its
 * error is taken from the open route's mode of the same number with the lengths as the problem has them, lowered by the
 * fingering's drop, so that air and bell cancel. A change of the open route counts as tube of the valves' bore there, and
 * so does what loops in the open route lose, for the problem keeps that route as long as it was.
 *
 * A bore that cannot be reckoned is refused, and so is one without any of the modes aimed at.
 *
 * @example solveSounding(problem, boreSounding(input, problem).value, null)
 */
export function boreSounding(input: BoreInput, problem: LengthProblem): BoreResult<Sounding> {
  const targets = input.targets.filter(({ weight = 1 }) => weight > 0)
  const highestMode = Math.max(...targets.map(({ mode }) => mode))
  const body = prepareBody(input.sections, input.conditions, { highestMode })
  if (!body.ok) return body
  const open = resonancesOf(body.value, input.open.inserts)
  if (!open.ok) return open
  const aims = targets.flatMap(({ mode, weight = 1 }) => {
    const peak = open.value.peaks[mode - 1]
    return peak === undefined ? [] : [{ mode, weight, openHz: peak.hz }]
  })
  if (aims.length === 0) return refused('targets', 'no such mode', 'a mode that the open route has')
  const diameterMm = valvesDiameterMm(input)
  const heard = { body: body.value, aims, problem, loops: input.loops, diameterMm }
  return accepted((trial) => soundAll(heard, trial))
}

function soundAll(heard: HeardBore, trial: TrialLengths): ReturnType<Sounding> {
  const notes: SoundedNote[] = []
  const changeMm = openChangeMm(heard.problem, trial)
  for (const [at, row] of heard.problem.rows.entries()) {
    const sounded = soundRow(heard, trial, changeMm, row, at)
    if (!sounded.ok)
      return {
        refusal: refusal('notSounded', `rows[${at}].loops`, sounded.refusal.found, sounded.refusal.expected),
      }
    notes.push(...sounded.value)
  }
  return { notes }
}

function openChangeMm({ loops }: LengthProblem, trial: TrialLengths): number {
  return loops
    .filter(({ inOpenRoute }) => inOpenRoute ?? false)
    .reduce((sum, { id, lengthMm }) => sum - (trial.lengthsMm[id]! - lengthMm), trial.openChangeMm)
}
