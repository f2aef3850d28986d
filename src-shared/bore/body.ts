import { keefeAir } from '../air/keefeAir.ts'
import { type BoreWaves, prepareWaves, slicesIn } from './boreWaves.ts'
import { boreLengthMm, conditionsProblem, insertsProblem, sectionsProblem } from './checkBore.ts'
import { findPeaks, type Peak } from './findPeaks.ts'
import { tableOfInserts } from './insertTable.ts'
import { accepted, type BoreResult, refused } from './refusal.ts'
import { type Route, routeAlong } from './route.ts'
import { type SampledRange, type SampledWaves, sampleWaves } from './sampledWaves.ts'
import type { BoreConditions, BoreSection, Insert } from './section.ts'
import type { SliceTable } from './sliceTable.ts'

/** How finely a bore is reckoned. */
export interface BodyFineness {
  /** Highest mode wanted; 16 when absent. */
  readonly highestMode?: number
  /** Largest error of a peak that the cutting into slices may leave, Hz; 0.01 when absent. */
  readonly sliceErrorHz?: number
}

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

/**
 * A bore ready for any loops: what lies before and after the valves, sampled over the range of the wanted modes. Make
 * it once an instrument; every fingering and every edit of a loop starts from it.
 */
export interface Body {
  readonly sections: readonly BoreSection[]
  readonly conditions: BoreConditions
  readonly lengthMm: number
  readonly highestMode: number
  readonly lowestHz: number
  readonly highestHz: number
  /** Keefe's speed of sound at the place of the valves (or the lips of a bore without). */
  readonly speedMPerS: number
  readonly waves: BoreWaves
  readonly sampled: SampledWaves
  readonly slicing: SliceReport
}

/** Loops longer than this many bodies are refused: their lowest mode would lie below the sampled range. */
export const mostInsertsPerBody = 8
const mostHalvings = 7

function rangeOf(lengthM: number, conditions: BoreConditions, highestMode: number): SampledRange {
  const bellC = conditions.bellTemperatureC ?? conditions.temperatureC
  const speedMPerS = keefeAir((conditions.temperatureC + bellC) / 2).speedMPerS
  const modeSpacingHz = speedMPerS / (2 * lengthM)
  return {
    lowestHz: modeSpacingHz / (4 * (mostInsertsPerBody + 1)),
    highestHz: (highestMode + 1) * modeSpacingHz,
    modeSpacingHz,
    speedMPerS,
  }
}

interface Cutting {
  readonly waves: BoreWaves
  readonly sampled: SampledWaves
  readonly slices: number
  readonly peaks: readonly Peak[]
}

/**
 * Samples a bore for its loops. Slices are halved until the open route's peaks keep still; how far they last moved is
 * in `slicing`. A bore, a temperature or a number of modes that cannot be reckoned is refused with its path.
 *
 * @example prepareBody([{ kind: 'cylinder', lengthMm: 1400, diameterMm: 11.66 }], { temperatureC: 24 })
 */
export function prepareBody(
  sections: readonly BoreSection[],
  conditions: BoreConditions,
  fineness: BodyFineness = {},
): BoreResult<Body> {
  const { highestMode = 16, sliceErrorHz = 0.01 } = fineness
  const problem = sectionsProblem(sections) ?? conditionsProblem(conditions)
  if (problem !== undefined) return { ok: false, refusal: problem }
  if (!Number.isInteger(highestMode) || highestMode < 1 || highestMode > 64)
    return refused('highestMode', highestMode, 'a whole number from 1 to 64')
  if (!(sliceErrorHz > 0)) return refused('sliceErrorHz', sliceErrorHz, 'an error above 0 Hz')
  const lengthM = boreLengthMm(sections) / 1000
  const range = rangeOf(lengthM, conditions, highestMode)
  const cut = (halvings: number) => cutOnce(sections, conditions, range, highestMode, halvings)
  let coarse = cut(0)
  let fine = cut(1)
  let report = compare(coarse, fine, sliceErrorHz)
  for (let halvings = 2; !report.met && halvings <= mostHalvings; halvings++) {
    coarse = fine
    fine = cut(halvings)
    report = compare(coarse, fine, sliceErrorHz)
  }
  if (!Number.isFinite(fine.sampled.interpolationError))
    return refused(
      'sections',
      `${boreLengthMm(sections)} mm of narrow tube`,
      'a bore that a wave gets through',
    )
  return accepted({
    sections,
    conditions,
    lengthMm: lengthM * 1000,
    highestMode,
    lowestHz: range.lowestHz,
    highestHz: range.highestHz,
    speedMPerS: fine.waves.valves?.air.speedMPerS ?? keefeAir(conditions.temperatureC).speedMPerS,
    waves: fine.waves,
    sampled: fine.sampled,
    slicing: report,
  })
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
  const route = routeAlong(sampled, tableOfInserts([], placeIn(waves, conditions)), 1)
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

function placeIn(waves: BoreWaves, conditions: BoreConditions) {
  return { atM: waves.valvesAtM, boreLengthM: waves.lengthM, conditions }
}

/**
 * The loops of one fingering made ready, in their order from the lips. Loops in a bore without a place for them, or of
 * more than eight times the body's length, are refused.
 *
 * @example insertsFor(body, [{ lengthMm: 82.3, diameterMm: 11.66 }])
 */
export function insertsFor(body: Body, inserts: readonly Insert[]): BoreResult<SliceTable> {
  const problem = insertsProblem(inserts)
  if (problem !== undefined) return { ok: false, refusal: problem }
  const totalMm = insertedMm(inserts)
  if (totalMm > 0 && body.waves.valves === undefined)
    return refused('inserts', `${totalMm} mm of loops`, 'no loops in a bore without a place for the valves')
  if (totalMm > mostInsertsPerBody * body.lengthMm)
    return refused(
      'inserts',
      `${totalMm} mm of loops`,
      `at most ${mostInsertsPerBody} times the bore's length`,
    )
  return accepted(tableOfInserts(inserts, placeIn(body.waves, body.conditions)))
}

function insertedMm(inserts: readonly Insert[]): number {
  return inserts.reduce((sum, insert) => sum + insert.lengthMm, 0)
}

/**
 * A body with the loops of one fingering in it. Loops are refused as by `insertsFor`.
 *
 * @example routeThrough(body, [{ lengthMm: 82.3, diameterMm: 11.66 }])
 */
export function routeThrough(body: Body, inserts: readonly Insert[]): BoreResult<Route> {
  const table = insertsFor(body, inserts)
  if (!table.ok) return table
  const finer = Math.max(1, Math.ceil((insertedMm(inserts) + body.lengthMm) / (2 * body.lengthMm)))
  return accepted(routeAlong(body.sampled, table.value, finer))
}
