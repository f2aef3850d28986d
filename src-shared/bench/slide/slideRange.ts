import { type CentsRange, routeDoubt } from '../doubt.ts'
import type { Bow } from './bow.ts'
import { movingBows, type PartTolerances, returnBows, type SlideJob } from './slide.ts'

/**
 * Cents that the slide's tolerances can make about its target, with the slide at pitch: by parts when
 * `partTolerancesMm` is given, else from `toleranceMm` on the whole loop, where worst case and root-sum-square
 * are the same.
 *
 * @example slideRange(job).worstCents // [-0.3, 0.3]
 */
export function slideRange(job: SlideJob): CentsRange {
  return routeDoubt(job.routeLengthMm, { tubeTolerancesMm: tubeTolerancesMm(job) })
}

/** What the loop may be out by when everything is out the same way, ± mm of tube. */
export function worstTubeMm(job: SlideJob): number {
  return tubeTolerancesMm(job).reduce((sum, each) => sum + each, 0)
}

function tubeTolerancesMm(job: SlideJob): readonly number[] {
  const parts = job.partTolerancesMm
  return parts === undefined ? [job.toleranceMm] : partTubeTolerancesMm(job, parts)
}

/** ± mm of tube that each dimension's own tolerance makes; each leg and each end is a separate piece. */
export function partTubeTolerancesMm(job: SlideJob, parts: PartTolerances): readonly number[] {
  const bows = movingBows(job)
  const each = (count: number, toleranceMm = 0): number[] => Array<number>(count).fill(toleranceMm)
  const spacings = [...bows, ...returnBows(job)].map((bow) => tubePerSpacing(bow) * (parts.legSpacingMm ?? 0))
  return [
    ...spacings,
    ...each(2 * bows.length, parts.outerLegMm),
    ...each(2 * bows.length, parts.straightEndMm),
    ...each(1, parts.knucklesMm),
    ...each(1, parts.passagesMm),
    ...each(1, parts.straightPassageMm),
    ...each(1, 2 * bows.length * (parts.outAtPitchMm ?? 0)),
  ]
}

/** Tube that a millimetre of leg spacing adds to a bow: π/2, or one where it goes into the piece across. */
function tubePerSpacing(bow: Bow): number {
  return bow.quarterRadiiMm === undefined ? Math.PI / 2 : 1
}
