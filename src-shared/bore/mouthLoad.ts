import type { BoreAir } from '../air/keefeAir.ts'
import type { BoreMouth } from './section.ts'

/**
 * Pressure and flow at the bell's mouth, up to a common factor: Re p, Im p, Re U, Im U into `out[0..3]`. Open: p = 0.
 * Unflanged: Silva, Guillemain, Kergomard, Mallaroni and Norris, J. Sound Vib. 322, 255 (2009), the causal fit of
 * |R| and of the end correction over the radius, in (ka)².
 *
 * @example setMouth('open', 0.061, air, omega, out) // 0, 0, 1, 0
 */
export function setMouth(
  mouth: BoreMouth,
  radiusM: number,
  air: BoreAir,
  omega: number,
  out: Float64Array,
): void {
  out[0] = 0
  out[1] = 0
  out[2] = 1
  out[3] = 0
  if (mouth === 'open') return
  const k = omega / air.speedMPerS
  const x = (k * radiusM) ** 2
  const size = (1 + 0.8 * x) / (1 + x * (1.3 + x * (0.266 + 0.0263 * x)))
  const correctionM = (0.6133 * radiusM * (1 + 0.0599 * x)) / (1 + x * (0.238 + x * (-0.0153 + 0.0015 * x)))
  const re = -size * Math.cos(2 * k * correctionM)
  const im = size * Math.sin(2 * k * correctionM)
  const scale = (air.densityKgPerM3 * air.speedMPerS) / (Math.PI * radiusM * radiusM)
  out[0] = scale * (1 + re)
  out[1] = scale * im
  out[2] = 1 - re
  out[3] = -im
}
