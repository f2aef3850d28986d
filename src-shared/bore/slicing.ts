import { type BoreWaves, isUncut, prepareWaves, slicesIn } from './boreWaves.ts'
import { findPeaks } from './findPeaks.ts'
import type { Peak } from './refinePeak.ts'
import { routeAlong } from './route.ts'
import { type SampledRange, type SampledWaves, sampleWaves } from './sampledWaves.ts'
import type { BoreConditions, BoreSection } from './section.ts'
import { tableOfSlices } from './sliceTable.ts'

/** How the bore was cut, and what that leaves. */
export interface SliceReport {
  readonly slices: number
  /** Slices of the coarser cutting it was compared with: about half. */
  readonly comparedWith: number
  /** Largest change of a peak of the open route from that cutting to this one. */
  readonly changeHz: number
  /** What twice the slices would still change at most: a quarter of that. (In theory a sixteenth.) */
  readonly errorHz: number
  /** Whether `errorHz` is as small as was asked for. */
  readonly met: boolean
}

const mostHalvings = 7
const mostSlices = 40_000

interface Cutting {
  readonly waves: BoreWaves
  readonly sampled: SampledWaves
  readonly slices: number
  readonly peaks: readonly Peak[]
}

/**
 * Samples a checked bore, its slices halved until the open route's peaks keep still within four times `sliceErrorHz`,
 * or seven times. Whether they do is in the report.
 *
 * @example cutUntilStill(sections, conditions, range, 16, 0.01).report
 */
export function cutUntilStill(
  sections: readonly BoreSection[],
  conditions: BoreConditions,
  range: SampledRange,
  highestMode: number,
  sliceErrorHz: number,
): { readonly waves: BoreWaves; readonly sampled: SampledWaves; readonly report: SliceReport } {
  const cut = (halvings: number) => cutOnce(sections, conditions, range, highestMode, halvings)
  let coarse = cut(0)
  let fine = isUncut(coarse.waves) ? coarse : cut(1)
  let report = compare(coarse, fine, sliceErrorHz)
  for (let halvings = 2; !report.met && halvings <= mostHalvings && fine.slices < mostSlices; halvings++) {
    coarse = fine
    fine = cut(halvings)
    report = compare(coarse, fine, sliceErrorHz)
  }
  return { waves: fine.waves, sampled: fine.sampled, report }
}

function cutOnce(
  sections: readonly BoreSection[],
  conditions: BoreConditions,
  range: SampledRange,
  highestMode: number,
  halvings: number,
): Cutting {
  const waves = prepareWaves(
    sections,
    conditions,
    halvings,
    (2 * Math.PI * range.highestHz) / range.speedMPerS,
  )
  const sampled = sampleWaves(waves, range)
  const route = routeAlong(sampled, tableOfSlices([], waves.lengthM, conditions), 1)
  return {
    waves,
    sampled,
    slices: slicesIn(waves),
    peaks: findPeaks(route, highestMode),
  }
}

function compare(coarse: Cutting, fine: Cutting, sliceErrorHz: number): SliceReport {
  let changeHz = 0
  const shared = Math.min(coarse.peaks.length, fine.peaks.length)
  for (let i = 0; i < shared; i++)
    changeHz = Math.max(changeHz, Math.abs(coarse.peaks[i]!.hz - fine.peaks[i]!.hz))
  const errorHz = changeHz / 4
  const met = errorHz <= sliceErrorHz && coarse.peaks.length === fine.peaks.length
  return { slices: fine.slices, comparedWith: coarse.slices, changeHz, errorHz, met }
}
