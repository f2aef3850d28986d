import { largestAt } from './leastLargest.ts'
import { type LengthAnswer, type LengthsAndErrors, lengthsAndErrors } from './lengthAnswer.ts'
import type { LengthProblem } from './lengthProblem.ts'
import type { LengthRefusal } from './lengthRefusal.ts'
import type { LinearProgrammer } from './linearProgrammer.ts'
import { type PreparedProblem, prepareProblem } from './prepareProblem.ts'
import { solutionAt } from './solutionAt.ts'
import { type FoundPoint, pointOfLeastLargest, pointOfLeastRms, rmsAt } from './solveLengths.ts'
import { gathered, soundedModel } from './soundedModel.ts'
import type { SoundedNote, Sounding } from './sounding.ts'
import { trialAt } from './trialAt.ts'

const mostRounds = 30
const mostHalvings = 6
/** A gain below this, cents, ends the search. */
const stillCents = 1e-4
/** A gain below this, cents, may be hidden by what a model's own figures are off. */
const hiddenCents = 0.01

/** Somewhere on the way: a point, its notes, and the problem as it looks from there. */
interface Place {
  readonly point: Float64Array
  readonly notes: readonly SoundedNote[]
  readonly here: PreparedProblem
  readonly objectiveCents: number
}

/**
 * As `solveLengths`, with the errors of another model: least weighted mean square, or least largest weighted error, of
 * all its notes. Each round solves the problem as it looks from where the last one ended, and goes there, or part of the
 * way, while that is better. Each row of the answer is the weighted mean of its notes.
 *
 * @param programmer needed for the largest error only
 * @example solveSounding(problem, sounding, null).status
 */
export function solveSounding(
  problem: LengthProblem,
  sounding: Sounding,
  programmer: LinearProgrammer | null,
): LengthAnswer {
  const prepared = prepareProblem(problem)
  if ('refusals' in prepared) return { status: 'refused', refusals: prepared.refusals }
  const first = placeAt(prepared, sounding, prepared.start)
  if ('refusal' in first) return { status: 'refused', refusals: [first.refusal] }
  let place = first
  for (let round = 0; round < mostRounds; round++) {
    const found = stepFrom(place, programmer)
    if (found.kind === 'failed') return { status: 'programFailed', reason: found.reason }
    const next = nextPlace(prepared, sounding, place, found.point)
    if (next === null) return answerAt(prepared, place, atItsBest(place, found.point), found)
    // What gains next to nothing is left, so that asking again from the answer moves nothing.
    if (place.objectiveCents - next.objectiveCents < stillCents)
      return answerAt(prepared, place, 'converged', found)
    place = next
  }
  return answerAt(prepared, place, 'stopped', { pulls: [] })
}

function placeAt(
  prepared: PreparedProblem,
  sounding: Sounding,
  point: Float64Array,
): Place | { readonly refusal: LengthRefusal } {
  const sounded = sounding(trialAt(prepared, point))
  if ('refusal' in sounded) return sounded
  const { notes } = sounded
  const here = soundedModel(prepared, point, notes)
  return { point, notes, here, objectiveCents: objectiveAt(here, point) }
}

function objectiveAt(here: PreparedProblem, point: Float64Array): number {
  return here.problem.objective === 'rms' ? rmsAt(here, point) : largestAt(here.model, point)
}

/** No step on the way to `towards` was better: because there is nothing to gain, or because the model led astray. */
function atItsBest({ here, objectiveCents }: Place, towards: Float64Array): 'converged' | 'stopped' {
  return objectiveCents - objectiveAt(here, towards) < hiddenCents ? 'converged' : 'stopped'
}

function stepFrom(
  { here }: Place,
  programmer: LinearProgrammer | null,
): FoundPoint | { kind: 'failed'; reason: string } {
  if (here.problem.objective === 'rms') return pointOfLeastRms(here)
  if (programmer === null) throw new Error('The largest error was asked for without a linear programmer.')
  return pointOfLeastLargest(here, programmer)
}

/** The first place on the way that is better than this one: the whole way, half of it, a quarter. */
function nextPlace(
  prepared: PreparedProblem,
  sounding: Sounding,
  from: Place,
  towards: Float64Array,
): Place | null {
  for (let halving = 0; halving <= mostHalvings; halving++) {
    const point = from.point.map((value, at) => value + (towards[at]! - value) * 0.5 ** halving)
    const place = placeAt(prepared, sounding, point)
    if (!('refusal' in place) && place.objectiveCents < from.objectiveCents) return place
  }
  return null
}

function answerAt(
  prepared: PreparedProblem,
  { here, notes, point }: Place,
  status: 'converged' | 'stopped',
  { pulls }: Pick<FoundPoint, 'pulls'>,
): LengthAnswer {
  const answer = solutionAt(here, prepared.problem.objective, status, point, pulls)
  return 'rows' in answer ? gathered(prepared, notes, answer) : answer
}

/**
 * What another model says of the lengths as they stand; `null` when it has nothing to say, or no row counts.
 *
 * @example soundedNow(problem, sounding)?.rmsCents
 */
export function soundedNow(problem: LengthProblem, sounding: Sounding): LengthsAndErrors | null {
  const loops = problem.loops.map((loop) => ({ ...loop, freedom: { kind: 'free' } as const }))
  const prepared = prepareProblem({ ...problem, open: { kind: 'held' }, loops })
  if ('refusals' in prepared) return null
  const place = placeAt(prepared, sounding, prepared.start)
  if ('refusal' in place) return null
  return gathered(prepared, place.notes, lengthsAndErrors(place.here, place.point))
}
