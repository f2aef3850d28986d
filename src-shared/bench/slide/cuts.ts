import { bowTubeMm } from './bow.ts'
import { innerTubeDiameterMm, movingBows, type SlideJob } from './slide.ts'
import { worstTubeMm } from './slideRange.ts'

/** One line of a cut list. */
export interface Cut {
  readonly part: string
  readonly count: number
  /** Each piece along its centre line when it is done, mm. */
  readonly finishedMm: number
  /** Each piece at the first cut: long by the trim, and never short of the long end of the loop's range, mm. */
  readonly cutMm: number
}

/**
 * The pieces of a slide: a bow with its straight ends for each pair of legs, and the inner legs. Equal bows share
 * a line. A piece that comes out shorter than nothing is left out: the slide's problems say why.
 *
 * @example slideCuts(job, 12.3) // [{ part: 'bow', … }, { part: 'inner leg', count: 2, … }]
 */
export function slideCuts(job: SlideJob, endMm: number): readonly Cut[] {
  const overMm = Math.max(job.trimMm, worstTubeMm(job))
  const piece = (part: string, count: number, finishedMm: number): Cut => ({
    part,
    count,
    finishedMm,
    cutMm: finishedMm + overMm,
  })
  const bowLengths = movingBows(job).map((bow) => bowTubeMm(bow) + 2 * endMm)
  const bows = [...new Set(bowLengths)].map((lengthMm) =>
    piece('bow', bowLengths.filter((other) => other === lengthMm).length, lengthMm),
  )
  const legs = piece('inner leg', 2 * bowLengths.length, job.outerLegMm - job.stopGapMm)
  return [...bows, legs].filter((cut) => cut.finishedMm > 0)
}

/** Tube to order for a cut list, mm: every piece at its first cut. Saw cuts are not counted. */
export function tubeToOrderMm(cuts: readonly Cut[]): number {
  return cuts.reduce((sum, cut) => sum + cut.count * cut.cutMm, 0)
}

/**
 * Mass of what moves, g: the finished bows and inner legs as tube of the bore and wall given.
 *
 * @example slideMassG(job, 12.3)
 */
export function slideMassG(job: SlideJob, endMm: number): number {
  const outerMm = innerTubeDiameterMm(job)
  const wallAreaMm2 = (Math.PI / 4) * (outerMm ** 2 - job.boreDiameterMm ** 2)
  const lengthMm = slideCuts(job, endMm).reduce((sum, cut) => sum + cut.count * cut.finishedMm, 0)
  return (wallAreaMm2 * lengthMm * job.densityGPerCm3) / 1000
}
