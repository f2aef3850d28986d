import type { Body } from './body.ts'
import { wavesWidth } from './boreWaves.ts'
import { carryBack } from './carryBack.ts'
import { readGrid } from './evenGrid.ts'
import { accepted, type BoreResult } from './refusal.ts'
import { insertsFor } from './routeThrough.ts'
import type { Insert } from './section.ts'
import type { SliceTable } from './sliceTable.ts'
import { wallFactors } from './wallLoss.ts'

/** What one more millimetre at the valves does to one mode. */
export interface GroupLength {
  readonly hz: number
  /** Length that the mode answers with: df/f = −dL/groupLength. It differs from mode to mode. */
  readonly groupLengthMm: number
  /** Change of pitch by one more millimetre of tube, cents; negative, since tube flattens. */
  readonly centsPerMm: number
  readonly hzPerMm: number
}

const waves = new Float64Array(wavesWidth)
const state = new Float64Array(4)
const turn = new Float64Array(2)

/**
 * Group length at each frequency, for a cylinder of the valves' bore put in there: (v/2π)·dφ/df, with v the wave's speed
 * in that tube and 2φ the phase that a wave loses on its way to the bell and back and to the lips and back. For a plain
 * tube it is its length. It foretells the move of a peak that stands out within two per cent; of a peak too shallow to
 * have a width it is only the size. Loops are refused as by `insertsFor`; a bore without valves is lengthened at the
 * lips.
 *
 * @example groupLengths(body, [], peaks.map(({ hz }) => hz))
 */
export function groupLengths(
  body: Body,
  inserts: readonly Insert[],
  frequenciesHz: readonly number[],
): BoreResult<readonly GroupLength[]> {
  const table = insertsFor(body, inserts)
  if (!table.ok) return table
  return accepted(frequenciesHz.map((hz) => groupLengthAt(body, table.value, hz)))
}

function groupLengthAt(body: Body, inserts: SliceTable, hz: number): GroupLength {
  const arm = hz * 1e-4
  setTurn(body, inserts, hz - arm)
  const [re, im] = turn as unknown as [number, number]
  setTurn(body, inserts, hz + arm)
  const lost = -Math.atan2(turn[1]! * re - turn[0]! * im, turn[0]! * re + turn[1]! * im)
  const groupLengthMm = ((waveSpeed(body, hz) / (2 * Math.PI)) * lost * 1000) / (4 * arm)
  return {
    hz,
    groupLengthMm,
    centsPerMm: -1200 / Math.LN2 / groupLengthMm,
    hzPerMm: -hz / groupLengthMm,
  }
}

const factors = new Float64Array(4)

/** Speed of a wave in a tube of the valves' bore, m/s: the wall slows it by a hundredth or two. */
function waveSpeed(body: Body, hz: number): number {
  const { diameterM, air } = body.waves.place
  const rv = (diameterM / 2) * Math.sqrt((2 * Math.PI * hz * air.densityKgPerM3) / air.viscosityPaS)
  wallFactors(body.conditions.losses ?? 'exact', rv, air.sqrtPrandtl, air.heatCapacityRatio - 1, factors)
  const [zRe, zIm, yRe, yIm] = factors as unknown as [number, number, number, number]
  const re = zRe * yRe - zIm * yIm
  const im = zRe * yIm + zIm * yRe
  return air.speedMPerS / Math.sqrt((Math.hypot(re, im) + re) / 2)
}

/** Product of the reflections on both sides of the valves; towards the lips the tube is closed. */
function setTurn(body: Body, inserts: SliceTable, hz: number): void {
  const { diameterM, air } = body.waves.place
  const impedance = (air.densityKgPerM3 * air.speedMPerS * 4) / (Math.PI * diameterM ** 2)
  readGrid(body.sampled, Math.sqrt(hz), waves)
  for (let part = 0; part < 4; part++) state[part] = waves[8 + part]!
  carryBack(inserts, Math.sqrt(2 * Math.PI * hz), state, 1)
  setQuotient(state[0]!, state[1]!, impedance * state[2]!, impedance * state[3]!)
  const [re, im] = turn as unknown as [number, number]
  setQuotient(waves[6]!, waves[7]!, impedance * waves[4]!, impedance * waves[5]!)
  const [lipsRe, lipsIm] = turn as unknown as [number, number]
  turn[0] = re * lipsRe - im * lipsIm
  turn[1] = re * lipsIm + im * lipsRe
}

/** (p − q)/(p + q). */
function setQuotient(pRe: number, pIm: number, qRe: number, qIm: number): void {
  const re = pRe + qRe
  const im = pIm + qIm
  const scale = 1 / (re * re + im * im)
  turn[0] = ((pRe - qRe) * re + (pIm - qIm) * im) * scale
  turn[1] = ((pIm - qIm) * re - (pRe - qRe) * im) * scale
}
