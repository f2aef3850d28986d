import type { Body } from './body.ts'
import { setWaves, wavesWidth } from './boreWaves.ts'
import { accepted, type BoreResult, refused } from './refusal.ts'
import { divide, setImpedance, setLips } from './route.ts'
import { insertsFor, routeThrough } from './routeThrough.ts'
import type { Insert } from './section.ts'

/** Input impedance at the lips over frequency, Pa·s/m³. */
export interface ImpedanceCurve {
  readonly hz: Float64Array
  readonly re: Float64Array
  readonly im: Float64Array
}

/**
 * Input impedance at any frequencies above 0, inside the body's sampled range or out of it, slice by slice.
 *
 * @example impedanceAt(body, [], [233, 466])
 */
export function impedanceAt(
  body: Body,
  inserts: readonly Insert[],
  frequenciesHz: readonly number[],
): BoreResult<ImpedanceCurve> {
  const bad = frequenciesHz.findIndex((hz) => !(hz > 0 && hz <= 1e5))
  if (bad >= 0) return refused(`frequenciesHz[${bad}]`, frequenciesHz[bad], 'a frequency from 0 to 100000 Hz')
  const table = insertsFor(body, inserts)
  if (!table.ok) return table
  const values = new Float64Array(wavesWidth)
  const lips = new Float64Array(4)
  const pair = new Float64Array(2)
  const curve = emptyCurve(frequenciesHz.length)
  for (const [i, hz] of frequenciesHz.entries()) {
    setWaves(body.waves, Math.sqrt(hz), values, 0)
    setLips(values, 0, Math.sqrt(hz), table.value, lips, 0)
    divide(lips, pair, 0)
    curve.hz[i] = hz
    curve.re[i] = pair[0]!
    curve.im[i] = pair[1]!
  }
  return accepted(curve)
}

function emptyCurve(count: number): ImpedanceCurve {
  return { hz: new Float64Array(count), re: new Float64Array(count), im: new Float64Array(count) }
}

/**
 * Input impedance for drawing: `count` frequencies evenly spread over the body's sampled range, read from the samples.
 *
 * @example impedanceCurve(body, [], 2000)
 */
export function impedanceCurve(
  body: Body,
  inserts: readonly Insert[],
  count: number,
): BoreResult<ImpedanceCurve> {
  if (!Number.isInteger(count) || count < 2 || count > 1e6)
    return refused('count', count, 'a whole number from 2 to 1000000')
  const route = routeThrough(body, inserts)
  if (!route.ok) return route
  const curve = emptyCurve(count)
  const pair = new Float64Array(2)
  for (let i = 0; i < count; i++) {
    const hz = body.lowestHz + ((body.highestHz - body.lowestHz) * i) / (count - 1)
    setImpedance(route.value, Math.sqrt(hz), pair, 0)
    curve.hz[i] = hz
    curve.re[i] = pair[0]!
    curve.im[i] = pair[1]!
  }
  return accepted(curve)
}
