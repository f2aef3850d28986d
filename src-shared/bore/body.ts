import { keefeAir } from '../air/keefeAir.ts'
import type { BoreWaves } from './boreWaves.ts'
import { boreLengthMm, conditionsProblem, sectionsProblem } from './checkBore.ts'
import { tableOfInserts } from './insertTable.ts'
import { boreOutline } from './outline.ts'
import { accepted, type BoreResult, refused } from './refusal.ts'
import { type ValvesWall, wallOnGrid } from './route.ts'
import type { SampledRange, SampledWaves } from './sampledWaves.ts'
import type { BoreConditions, BoreSection } from './section.ts'
import type { SliceTable } from './sliceTable.ts'
import { cutUntilStill, type SliceReport } from './slicing.ts'

/** How finely a bore is reckoned. */
export interface BodyFineness {
  /** Highest mode wanted; 16 when absent. */
  readonly highestMode?: number
  /** Largest error of a peak that the cutting into slices may leave, Hz; 0.01 when absent. */
  readonly sliceErrorHz?: number
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
  /** Of a tube of the valves' bore, for loops. */
  readonly valvesWall: ValvesWall
  readonly slicing: SliceReport
}

/** Loops longer than this many bodies are refused: their lowest mode would lie below the sampled range. */
export const mostInsertsPerBody = 8
/** Only a bore that swallows its waves is so hard to sample. */
const worstInterpolation = 1e-4

/** The air beyond the mouth counts as two thirds of its radius: much for a disc, nothing for an instrument. */
function rangeOf(
  sections: readonly BoreSection[],
  conditions: BoreConditions,
  highestMode: number,
): SampledRange {
  const bellC = conditions.bellTemperatureC ?? conditions.temperatureC
  const speedMPerS = keefeAir((conditions.temperatureC + bellC) / 2).speedMPerS
  const { points } = boreOutline(sections)
  const lengthM = boreLengthMm(sections) / 1000 + (points.at(-1)?.[1] ?? 0) / 3000
  const modeSpacingHz = speedMPerS / (2 * lengthM)
  return {
    lowestHz: modeSpacingHz / (4 * (mostInsertsPerBody + 1)),
    highestHz: (highestMode + 1) * modeSpacingHz,
    modeSpacingHz,
    speedMPerS,
  }
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
  const range = rangeOf(sections, conditions, highestMode)
  const { waves, sampled, report } = cutUntilStill(sections, conditions, range, highestMode, sliceErrorHz)
  if (!(sampled.interpolationError < worstInterpolation))
    return refused(
      'sections',
      `${boreLengthMm(sections)} mm of tube`,
      'a tube longer than wide that lets its waves through',
    )
  return accepted({
    sections,
    conditions,
    lengthMm: lengthM * 1000,
    highestMode,
    lowestHz: range.lowestHz,
    highestHz: range.highestHz,
    speedMPerS: waves.place.air.speedMPerS,
    waves,
    sampled,
    valvesWall: wallOnGrid(sampled, valvesTube(waves, conditions)),
    slicing: report,
  })
}

function valvesTube(waves: BoreWaves, conditions: BoreConditions): SliceTable {
  const place = { atM: waves.valvesAtM, boreLengthM: waves.lengthM, conditions }
  return tableOfInserts([{ lengthMm: 1, diameterMm: waves.place.diameterM * 1000 }], place)
}
