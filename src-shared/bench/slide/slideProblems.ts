import { lengthText } from '../../quantity/figures.ts'
import { acrossMm, type Bow } from './bow.ts'
import { movingBows, outerTubeDiameterMm, returnBows, type SlideJob } from './slide.ts'
import { straightEndMm } from './slideTube.ts'

/** Why a slide cannot be built as it stands, and by how many millimetres what would have to change. */
export type SlideProblem =
  | { readonly kind: 'negativeStraightEnd'; readonly shortenOuterLegsByMm: number; readonly message: string }
  | {
      readonly kind: 'tooLittleEngaged'
      readonly engagedMm: number
      readonly lessTravelByMm: number
      readonly message: string
    }
  | { readonly kind: 'legsTooFarApart'; readonly nearerByMm: number; readonly message: string }
  | { readonly kind: 'legsTooNear'; readonly fartherByMm: number; readonly message: string }
  | { readonly kind: 'loopTooShort'; readonly lengthenByMm: number; readonly message: string }
  | { readonly kind: 'outBeyondTravel'; readonly byMm: number; readonly message: string }

/** How far a one-piece bow may be sprung to meet its legs, mm; a starting point of the bench, not a limit of the brass. */
const springMm = 0.25

/** What rounding leaves over is not a problem, mm. */
const slackMm = 1e-9

/** Writes a length, mm, into a sentence. */
type Say = (lengthMm: number) => string

/**
 * What stands in the way of building a slide whose straight ends come out at `endMm`, its sentences in millimetres or
 * inches. Empty when nothing does.
 *
 * @example slideProblems(job, -3)[0] // { kind: 'negativeStraightEnd', shortenOuterLegsByMm: 3, … }
 */
export function slideProblems(
  job: SlideJob,
  endMm: number,
  unit: 'mm' | 'in' = 'mm',
): readonly SlideProblem[] {
  const say: Say = (mm) => lengthText(mm, unit)
  return [
    ...lengthProblems(job, endMm, say),
    ...engagementProblems(job, say),
    ...[...movingBows(job), ...returnBows(job)].flatMap((bow) => spacingProblems(job, bow, say)),
    ...bowAtHandProblems(job, say),
  ]
}

function lengthProblems(job: SlideJob, endMm: number, say: Say): readonly SlideProblem[] {
  if (endMm >= -slackMm) return []
  const shorterMm = -endMm
  const shortestLegMm = job.stopGapMm + job.travelMm + job.leastEngagedMm
  const stillOverMm = shorterMm - Math.max(0, job.outerLegMm - shortestLegMm)
  const legsSuffice = stillOverMm <= slackMm
  const tubeMm = 2 * movingBows(job).length * shorterMm
  const negative: SlideProblem = {
    kind: 'negativeStraightEnd',
    shortenOuterLegsByMm: shorterMm,
    message: legsSuffice
      ? `The parts are longer than the loop. Each outer leg must be ${say(shorterMm)} shorter.`
      : `The parts are ${say(tubeMm)} of tube longer than the loop, more than shorter legs can save.`,
  }
  return legsSuffice ? [negative] : [negative, spacingForLength(job, shortestLegMm, say)]
}

/** With the legs as short as travel and engagement let them be, only narrower bows can save the tube. */
function spacingForLength(job: SlideJob, shortestLegMm: number, say: Say): SlideProblem {
  const bow = movingBows(job)[0]!
  const shortest = { ...job, outerLegMm: Math.min(job.outerLegMm, shortestLegMm) }
  const endAt = (nearerMm: number): number => endWithBowsNearer(shortest, nearerMm)
  const roomMm = Math.max(0, bow.legSpacingMm - narrowestMm(job, bow))
  if (endAt(roomMm) >= -slackMm) {
    const nearerByMm = leastNearer(endAt, roomMm)
    const message = `With legs just long enough for the travel, the bow is too wide: the legs must be ${say(nearerByMm)} nearer to each other.`
    return { kind: 'legsTooFarApart', nearerByMm, message }
  }
  const lengthenByMm = -2 * movingBows(job).length * endAt(roomMm)
  const message = `The loop is too short for a slide of this bore and travel: with the shortest legs and the narrowest bow it lacks ${say(lengthenByMm)} of tube.`
  return { kind: 'loopTooShort', lengthenByMm, message }
}

/** The straight end that every moving bow is left with when its legs are `nearerMm` nearer to each other, mm. */
function endWithBowsNearer(job: SlideJob, nearerMm: number): number {
  const furtherPairs = (job.furtherPairs ?? []).map((pair) => ({
    ...pair,
    legSpacingMm: pair.legSpacingMm - nearerMm,
  }))
  const narrower = { ...job, legSpacingMm: job.legSpacingMm - nearerMm, furtherPairs }
  return straightEndMm(narrower, job.targetMm, job.bendCorrection)
}

/** How much nearer the legs must be for a straight end of 0, mm; the end grows as they do. */
function leastNearer(endAt: (nearerMm: number) => number, roomMm: number): number {
  let [low, high] = [0, roomMm]
  for (let halvings = 0; halvings < 60; halvings++) {
    const middle = (low + high) / 2
    if (endAt(middle) < 0) low = middle
    else high = middle
  }
  return high
}

/** The least spacing of two legs: their outer tubes touch, or the quarters meet. */
function narrowestMm(job: SlideJob, bow: Bow): number {
  const [first, second] = bow.quarterRadiiMm ?? [0, 0]
  return Math.max(outerTubeDiameterMm(job), first + second)
}

function engagementProblems(job: SlideJob, say: Say): readonly SlideProblem[] {
  const problems: SlideProblem[] = []
  const engagedMm = job.outerLegMm - job.stopGapMm - job.travelMm
  const lessTravelByMm = job.leastEngagedMm - engagedMm
  if (lessTravelByMm > slackMm) {
    const message = `At full travel ${say(engagedMm)} of each inner leg stay inside, ${say(job.leastEngagedMm)} are wanted: travel ${say(lessTravelByMm)} less, or make legs that much longer.`
    problems.push({ kind: 'tooLittleEngaged', engagedMm, lessTravelByMm, message })
  }
  const byMm = job.outAtPitchMm - job.travelMm
  if (byMm > slackMm) {
    const message = `The slide stands ${say(job.outAtPitchMm)} out at pitch, ${say(byMm)} more than its travel.`
    problems.push({ kind: 'outBeyondTravel', byMm, message })
  }
  return problems
}

function spacingProblems(job: SlideJob, bow: Bow, say: Say): readonly SlideProblem[] {
  const quartersMm = -acrossMm(bow)
  const tubesMm = outerTubeDiameterMm(job) - bow.legSpacingMm
  const fartherByMm = Math.max(quartersMm, tubesMm)
  if (fartherByMm <= slackMm) return []
  const cause =
    quartersMm > tubesMm
      ? 'The two quarters of the bow do not fit between the legs'
      : 'The outer tubes run into each other'
  const message = `${cause}: the legs must be ${say(fartherByMm)} farther apart.`
  return [{ kind: 'legsTooNear', fartherByMm, message }]
}

function bowAtHandProblems(job: SlideJob, say: Say): readonly SlideProblem[] {
  if (job.bowAtHandRadiusMm === undefined) return []
  const overMm = job.legSpacingMm - 2 * job.bowAtHandRadiusMm
  if (overMm > springMm) {
    const message = `The legs are ${say(overMm)} too far apart for the bow at hand.`
    return [{ kind: 'legsTooFarApart', nearerByMm: overMm, message }]
  }
  if (overMm < -springMm) {
    const message = `The legs are ${say(-overMm)} too near to each other for the bow at hand.`
    return [{ kind: 'legsTooNear', fartherByMm: -overMm, message }]
  }
  return []
}
