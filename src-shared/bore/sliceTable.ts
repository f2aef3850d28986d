import { type BoreAir, keefeAir } from '../air/keefeAir.ts'
import type { BoreConditions, WallLosses } from './section.ts'
import type { Slice } from './slice.ts'

/** Figures kept for each slice, in this order, in one typed array. */
export const sliceWidth = 8
/** Mean radius over √(η/ρ), so that rv is this times √ω. */
export const atRv = 0
/** Square root of the Prandtl number of the air. */
export const atSqrtPrandtl = 1
/** Ratio of specific heats less one. */
export const atGammaMinusOne = 2
/** (length over speed of sound)². */
export const atDelay = 3
/** End radius over start radius, less 1. */
export const atTaper = 4
/** Series inertance of B, kg/m⁴. */
export const atInertance = 5
/** Shunt compliance of C, m³/Pa. */
export const atCompliance = 6

/** Slices made ready for the matrices: all that does not depend on the frequency. */
export interface SliceTable {
  readonly count: number
  readonly figures: Float64Array
  readonly losses: WallLosses
}

/**
 * The air at a place along the bore: one temperature, or a straight line from the lips to the rim.
 *
 * @example airAt({ temperatureC: 30, bellTemperatureC: 20 }, 0.5) // Keefe's air at 25 °C
 */
export function airAt(conditions: BoreConditions, shareOfLength: number): BoreAir {
  const { temperatureC } = conditions
  const bellC = conditions.bellTemperatureC ?? temperatureC
  return keefeAir(temperatureC + (bellC - temperatureC) * shareOfLength)
}

/**
 * Makes a table of slices. `lengthM` is the bore's whole length, for the air along it. With spherical wave fronts a
 * slice's length becomes its slant and its area that of the cap, S·2/(1 + cos θ).
 *
 * @example tableOfSlices(cut.after, cut.lengthM, { temperatureC: 24 }).count
 */
export function tableOfSlices(
  slices: readonly Slice[],
  lengthM: number,
  conditions: BoreConditions,
): SliceTable {
  const figures = new Float64Array(slices.length * sliceWidth)
  const spherical = conditions.waveFronts !== 'plane'
  for (let i = 0; i < slices.length; i++) {
    const slice = slices[i]!
    const row = figures.subarray(i * sliceWidth, (i + 1) * sliceWidth)
    const air = airAt(conditions, lengthM > 0 ? slice.middleM / lengthM : 0)
    if (slice.volumeM3 === undefined) fillTube(row, slice, air, spherical)
    else fillCup(row, slice.volumeM3, air)
  }
  return { count: slices.length, figures, losses: conditions.losses ?? 'exact' }
}

/** A cup is a slice without length, inertance or wall: only its compliance is left. */
function fillCup(row: Float64Array, volumeM3: number, air: BoreAir): void {
  row[atRv] = 1e12
  row[atSqrtPrandtl] = air.sqrtPrandtl
  row[atCompliance] = volumeM3 / (air.densityKgPerM3 * air.speedMPerS ** 2)
}

function fillTube(row: Float64Array, slice: Slice, air: BoreAir, spherical: boolean): void {
  const { lengthM, startRadiusM, endRadiusM } = slice
  const slantM = Math.hypot(lengthM, endRadiusM - startRadiusM)
  const meanM = (startRadiusM + endRadiusM) / 2
  const waveLengthM = spherical ? slantM : lengthM
  const capShare = spherical ? 2 / (1 + lengthM / slantM) : 1
  const areaM2 = Math.PI * meanM * meanM * capShare
  const meanOverStart = (meanM / startRadiusM) ** 2
  row[atRv] = meanM * Math.sqrt(air.densityKgPerM3 / air.viscosityPaS)
  row[atSqrtPrandtl] = air.sqrtPrandtl
  row[atGammaMinusOne] = air.heatCapacityRatio - 1
  row[atDelay] = (waveLengthM / air.speedMPerS) ** 2
  row[atTaper] = (endRadiusM - startRadiusM) / startRadiusM
  row[atInertance] =
    (((meanOverStart * startRadiusM) / endRadiusM) * air.densityKgPerM3 * waveLengthM) / areaM2
  row[atCompliance] = (areaM2 * waveLengthM) / (air.densityKgPerM3 * air.speedMPerS ** 2) / meanOverStart
}
