import { centsBetween } from '../../pitch/cents.ts'
import type { CentsRange } from '../doubt.ts'
import type { Finding } from '../finding.ts'
import { bowAcousticMm, bowTubeMm } from './bow.ts'
import { checkSlide } from './checkSlide.ts'
import { type Cut, slideCuts, slideMassG } from './cuts.ts'
import { movingBows, type SlideJob } from './slide.ts'
import { type SlideProblem, slideProblems } from './slideProblems.ts'
import { slideRange } from './slideRange.ts'
import { slideTube, straightEndMm } from './slideTube.ts'

/** What a slide's parts come to. Lengths in mm along the centre line. */
export interface SizedSlide {
  readonly kind: 'sized'
  readonly job: SlideJob
  /** What its sentences and its drawing are written in. */
  readonly unit: 'mm' | 'in'
  readonly targetMm: number
  /** The curves of the moving bows together, straight ends left out: πR for one half circle. */
  readonly bowMm: number
  /** The first bow as one piece: its curve and its two straight ends. */
  readonly bowWithEndsMm: number
  /** Each straight end. Negative when the slide cannot be built; see `problems`. */
  readonly straightEndMm: number
  readonly innerLegMm: number
  readonly engagedAtTravelMm: number
  /** What the first millimetre of movement out does to the note; negative, it flattens. */
  readonly centsPerMmOut: number
  /** What moves: bows, straight ends and inner legs. */
  readonly massG: number
  readonly cuts: readonly Cut[]
  readonly range: CentsRange
  readonly bend: BendCorrection
  readonly problems: readonly SlideProblem[]
}

/** The bends' correction, to be shown beside the plain figures whichever of the two is used. */
export interface BendCorrection {
  /** Mean acoustic length of the moving bows over their centre line. */
  readonly factor: number
  /** By how much the moving bows count short of their centre line, mm. */
  readonly shorterMm: number
  /** Straight end without and with the correction, mm. */
  readonly plainStraightEndMm: number
  readonly correctedStraightEndMm: number
}

/** A job with values that cannot be worked with. */
export interface RefusedSlide {
  readonly kind: 'refused'
  readonly findings: readonly Finding[]
}

/**
 * Sizes a slide: solves
 * `loop = knuckles + passages − straight passage + 2·outer leg + 2·out + πR + 2·straight end`
 * for the straight end and works out the rest. A slide that cannot be built is still sized, with `problems`
 * that say by how many millimetres what would have to change. Values that are not lengths are refused.
 *
 * @example sizeSlide(job) // { kind: 'sized', straightEndMm: 12.3, … }
 */
export function sizeSlide(job: SlideJob, unit: 'mm' | 'in' = 'mm'): SizedSlide | RefusedSlide {
  const findings = checkSlide(job)
  if (findings.length > 0) return { kind: 'refused', findings }
  const endMm = straightEndMm(job, job.targetMm, job.bendCorrection)
  const innerLegMm = job.outerLegMm - job.stopGapMm
  const [firstBow] = movingBows(job)
  return {
    kind: 'sized',
    job,
    unit,
    targetMm: job.targetMm,
    bowMm: slideTube(job, false).bowsMm,
    bowWithEndsMm: bowTubeMm(firstBow!) + 2 * endMm,
    straightEndMm: endMm,
    innerLegMm,
    engagedAtTravelMm: innerLegMm - job.travelMm,
    centsPerMmOut: centsOut(job, 1),
    massG: slideMassG(job, endMm),
    cuts: slideCuts(job, endMm),
    range: slideRange(job),
    bend: bendCorrection(job),
    problems: slideProblems(job, endMm, unit),
  }
}

/** Straight ends shorter than nothing by this are nothing, mm. */
const leastShownMm = 0.05

/**
 * Whether the parts fit into the loop. Of a slide whose straight ends would be shorter than nothing there is no bow to
 * make, and nothing to cut.
 */
export function isBuildable({ straightEndMm }: Pick<SizedSlide, 'straightEndMm'>): boolean {
  return straightEndMm >= -leastShownMm
}

/**
 * What a movement out from pitch does to the note, cents; negative, it flattens.
 *
 * @example centsOut(job, 25.4)
 */
export function centsOut(job: SlideJob, movementMm: number): number {
  const tubeMm = 2 * movingBows(job).length * movementMm
  return centsBetween(job.routeLengthMm + tubeMm, job.routeLengthMm)
}

function bendCorrection(job: SlideJob): BendCorrection {
  const bows = movingBows(job)
  const plainMm = slideTube(job, false).bowsMm
  const acousticMm = bows.reduce((sum, bow) => sum + bowAcousticMm(bow, job.boreDiameterMm), 0)
  return {
    factor: acousticMm / plainMm,
    shorterMm: plainMm - acousticMm,
    plainStraightEndMm: straightEndMm(job, job.targetMm, false),
    correctedStraightEndMm: straightEndMm(job, job.targetMm, true),
  }
}
