import type { BoreAir } from '../air/keefeAir.ts'
import { carryBack } from './carryBack.ts'
import { type CutBore, cutBore } from './cutBore.ts'
import { setMouth } from './mouthLoad.ts'
import type { BoreConditions, BoreMouth, BoreSection } from './section.ts'
import { airAt, type SliceTable, tableOfSlices } from './sliceTable.ts'

/** Twelve numbers at each frequency: the matrix before the valves (A B C D), then p and U just behind them. */
export const wavesWidth = 12
const atMouthSide = 8

/** The slices of a bore on either side of the valves. */
interface SlicedBore {
  readonly before: SliceTable
  readonly after: SliceTable
}

/**
 * A bore made ready: everything but the loops. It is cut twice, the second time with every slice halved, for the
 * error of a cutting falls as 1/n²: a third of the difference, added to the finer figures, takes most of it away.
 */
export interface BoreWaves {
  readonly coarse: SlicedBore
  readonly fine: SlicedBore
  readonly mouth: BoreMouth
  readonly mouthRadiusM: number
  readonly mouthAir: BoreAir
  readonly lengthM: number
  /** Distance of the valves from the lips; 0 for a bore without. */
  readonly valvesAtM: number
  /** The longer of the two parts, which sets how fast the twelve numbers turn with frequency. */
  readonly longerPartM: number
  readonly hasValves: boolean
  /** Bore and air at the valves' place, or at the lips of a bore without. */
  readonly place: { readonly diameterM: number; readonly air: BoreAir }
}

/**
 * Makes a checked bore ready. `halvings` (of the coarser cutting) and `waveNumber` as in `cutBore`.
 *
 * @example prepareWaves([{ kind: 'cylinder', lengthMm: 1400, diameterMm: 11.66 }], { temperatureC: 24 }, 0, 36)
 */
export function prepareWaves(
  sections: readonly BoreSection[],
  conditions: BoreConditions,
  halvings: number,
  waveNumber: number,
): BoreWaves {
  const cut = cutBore(sections, halvings, waveNumber)
  const finer = cutBore(sections, halvings + 1, waveNumber)
  const valvesAtM = cut.valves?.atM ?? 0
  return {
    coarse: tablesOf(cut, conditions),
    fine: tablesOf(finer, conditions),
    mouth: conditions.mouth ?? 'unflanged',
    mouthRadiusM: cut.mouthRadiusM,
    mouthAir: airAt(conditions, 1),
    lengthM: cut.lengthM,
    valvesAtM,
    longerPartM: Math.max(valvesAtM, cut.lengthM - valvesAtM + (2 * cut.mouthRadiusM) / 3),
    hasValves: cut.valves !== undefined,
    place: {
      diameterM: cut.valves?.diameterM ?? cut.lipsDiameterM,
      air: airAt(conditions, valvesAtM / cut.lengthM),
    },
  }
}

function tablesOf(cut: CutBore, conditions: BoreConditions): SlicedBore {
  return {
    before: tableOfSlices(cut.before, cut.lengthM, conditions),
    after: tableOfSlices(cut.after, cut.lengthM, conditions),
  }
}

/**
 * Number of slices of the finer cutting.
 *
 * @example slicesIn(prepareWaves([{ kind: 'cylinder', lengthMm: 1400, diameterMm: 11.66 }], air, 0, 36)) // 1
 */
export function slicesIn({ fine }: BoreWaves): number {
  return fine.before.count + fine.after.count
}

/**
 * Whether halving cut nothing: cylinders and the short pieces of a dense profile are left whole.
 *
 * @example isUncut(prepareWaves([{ kind: 'cylinder', lengthMm: 1400, diameterMm: 11.66 }], air, 0, 36)) // true
 */
export function isUncut(waves: BoreWaves): boolean {
  return slicesIn(waves) === waves.coarse.before.count + waves.coarse.after.count
}

const state = new Float64Array(8)
const coarseFigures = new Float64Array(wavesWidth)

/**
 * The twelve numbers at a frequency. `rootHz` is √(frequency in Hz), above 0; writes `out[at..at + 11]`.
 *
 * @example setWaves(waves, Math.sqrt(440), out, 0)
 */
export function setWaves(waves: BoreWaves, rootHz: number, out: Float64Array, at: number): void {
  setSlicedWaves(waves, waves.fine, rootHz, out, at)
  if (isUncut(waves)) return
  setSlicedWaves(waves, waves.coarse, rootHz, coarseFigures, 0)
  for (let k = 0; k < wavesWidth; k++) {
    const fine = out[at + k]!
    out[at + k] = fine + (fine - coarseFigures[k]!) / 3
  }
}

function setSlicedWaves(
  waves: BoreWaves,
  { before, after }: SlicedBore,
  rootHz: number,
  out: Float64Array,
  at: number,
): void {
  const omega = 2 * Math.PI * rootHz * rootHz
  const sqrtOmega = Math.sqrt(omega)
  state.fill(0)
  state[0] = 1
  state[6] = 1
  carryBack(before, sqrtOmega, state, 2)
  for (let part = 0; part < 2; part++) {
    out[at + part] = state[part]!
    out[at + 2 + part] = state[4 + part]!
    out[at + 4 + part] = state[2 + part]!
    out[at + 6 + part] = state[6 + part]!
  }
  setMouth(waves.mouth, waves.mouthRadiusM, waves.mouthAir, omega, state)
  carryBack(after, sqrtOmega, state, 1)
  for (let part = 0; part < 4; part++) out[at + atMouthSide + part] = state[part]!
}
