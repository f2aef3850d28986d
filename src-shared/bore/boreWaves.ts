import type { BoreAir } from '../air/keefeAir.ts'
import { cutBore } from './cutBore.ts'
import { setMouth } from './mouthLoad.ts'
import type { BoreConditions, BoreMouth, BoreSection } from './section.ts'
import { carryBack } from './sliceMatrix.ts'
import { airAt, type SliceTable, tableOfSlices } from './sliceTable.ts'

/** Twelve numbers at each frequency: the matrix before the valves (A B C D), then p and U just behind them. */
export const wavesWidth = 12
const atMouthSide = 8

/** A bore made ready for one fineness of slices: everything but the loops. */
export interface BoreWaves {
  readonly before: SliceTable
  readonly after: SliceTable
  readonly mouth: BoreMouth
  readonly mouthRadiusM: number
  readonly mouthAir: BoreAir
  readonly lengthM: number
  /** Distance of the valves from the lips; 0 for a bore without. */
  readonly valvesAtM: number
  /** The longer of the two parts, which sets how fast the twelve numbers turn with frequency. */
  readonly longerPartM: number
  readonly valves?: { readonly diameterM: number; readonly air: BoreAir }
}

/**
 * Makes a checked bore ready. `fineness` and `waveNumber` as in `cutBore`.
 *
 * @example prepareWaves([{ kind: 'cylinder', lengthMm: 1400, diameterMm: 11.66 }], { temperatureC: 24 }, 8, 36)
 */
export function prepareWaves(
  sections: readonly BoreSection[],
  conditions: BoreConditions,
  fineness: number,
  waveNumber: number,
): BoreWaves {
  const cut = cutBore(sections, fineness, waveNumber)
  const valvesAtM = cut.valves?.atM ?? 0
  return {
    before: tableOfSlices(cut.before, cut.lengthM, conditions),
    after: tableOfSlices(cut.after, cut.lengthM, conditions),
    mouth: conditions.mouth ?? 'unflanged',
    mouthRadiusM: cut.mouthRadiusM,
    mouthAir: airAt(conditions, 1),
    lengthM: cut.lengthM,
    valvesAtM,
    longerPartM: Math.max(valvesAtM, cut.lengthM - valvesAtM),
    ...(cut.valves === undefined
      ? {}
      : { valves: { diameterM: cut.valves.diameterM, air: airAt(conditions, valvesAtM / cut.lengthM) } }),
  }
}

const state = new Float64Array(8)

/**
 * The twelve numbers at a frequency, exactly for these slices. `rootHz` is √(frequency in Hz), above 0; writes
 * `out[at..at + 11]`.
 *
 * @example setWaves(waves, Math.sqrt(440), out, 0)
 */
export function setWaves(waves: BoreWaves, rootHz: number, out: Float64Array, at: number): void {
  const omega = 2 * Math.PI * rootHz * rootHz
  const sqrtOmega = Math.sqrt(omega)
  state.fill(0)
  state[0] = 1
  state[6] = 1
  carryBack(waves.before, sqrtOmega, state, 2)
  for (let part = 0; part < 2; part++) {
    out[at + part] = state[part]!
    out[at + 2 + part] = state[4 + part]!
    out[at + 4 + part] = state[2 + part]!
    out[at + 6 + part] = state[6 + part]!
  }
  setMouth(waves.mouth, waves.mouthRadiusM, waves.mouthAir, omega, state)
  carryBack(waves.after, sqrtOmega, state, 1)
  for (let part = 0; part < 4; part++) out[at + atMouthSide + part] = state[part]!
}
