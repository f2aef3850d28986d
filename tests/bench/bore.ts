import { add, type Complex, complex, cosh, divide, multiply, sinh, sqrt, subtract } from 'mathjs'
import { type Body, prepareBody } from '#shared/bore/body.ts'
import { carryBack } from '#shared/bore/carryBack.ts'
import { cutBore } from '#shared/bore/cutBore.ts'
import { setMouth } from '#shared/bore/mouthLoad.ts'
import { resonancesOf } from '#shared/bore/resonances.ts'
import type { BoreConditions, Insert } from '#shared/bore/section.ts'
import type { Slice } from '#shared/bore/slice.ts'
import { airAt, tableOfSlices } from '#shared/bore/sliceTable.ts'
import { wallFactors } from '#shared/bore/wallLoss.ts'
import { demand, highBore } from '../shared/bore/bores.ts'
import { type Figure, medianMs } from './figure.ts'

const air: BoreConditions = { temperatureC: 26.85 }
const runs = 40
const loopsMm = [82.3, 169.5, 262]
const sevenLoopsMm = [82.3, 169.5, 262, 366, 110, 55, 30]

/** Every combination of loops, the open one first. */
function combinations(lengthsMm: readonly number[]): readonly (readonly Insert[])[] {
  return Array.from({ length: 2 ** lengthsMm.length }, (_, bits) =>
    lengthsMm.filter((_, i) => (bits >> i) & 1).map((lengthMm) => ({ lengthMm, diameterMm: 11.66 })),
  )
}

const prepare = () => demand(prepareBody(highBore, air))
const all = (body: Body, routes: readonly (readonly Insert[])[]) => {
  for (const inserts of routes) demand(resonancesOf(body, inserts))
}

/**
 * Times the bore's engine on one core: the invented high instrument with three valves, modes to 16, slices for 0.01 Hz.
 * Beside it mathjs's complex numbers: one impedance through the same slices timed in both, and the eight fingerings as a
 * plain script would do them, each on a grid of 1 Hz, reckoned up from that (it would take minutes).
 *
 * @example for (const row of benchBore()) console.log(row.name, row.value, row.unit, row.target)
 */
export function benchBore(): readonly Figure[] {
  const from = performance.now()
  const body = prepare()
  all(body, combinations(loopsMm))
  const coldMs = performance.now() - from
  const eight = combinations(loopsMm)
  const eightMs = medianMs(runs, () => all(prepare(), eight))
  const firstMs = medianMs(runs, () => all(prepare(), [[]]))
  const furtherMs = medianMs(runs, () => all(body, eight.slice(1))) / 7
  const manyMs = medianMs(8, () => all(prepare(), combinations(sevenLoopsMm)))
  const editedMs = medianMs(runs, () => all(body, eight))
  const plain = plainTimes(body)
  const scriptMs = plain.mathjsMs * Math.ceil(body.highestHz - body.lowestHz) * 8
  return [
    { name: 'three valves, eight fingerings, cold', value: coldMs, unit: 'ms', target: null },
    { name: 'three valves, eight fingerings, warm', value: eightMs, unit: 'ms', target: 20 },
    { name: 'first fingering', value: firstMs, unit: 'ms', target: null },
    { name: 'each further fingering', value: furtherMs, unit: 'ms', target: null },
    {
      name: 'each further, share of the first',
      value: (100 * furtherMs) / firstMs,
      unit: '%',
      target: 3,
    },
    { name: '128 fingerings', value: manyMs, unit: 'ms', target: 300 },
    { name: 'a loop edit, all eight fingerings', value: editedMs, unit: 'ms', target: 5 },
    { name: 'slices', value: body.slicing.slices, unit: '', target: null },
    { name: 'error left by the slices', value: body.slicing.errorHz, unit: 'Hz', target: 0.01 },
    {
      name: 'one impedance, mathjs over this engine',
      value: plain.mathjsMs / plain.engineMs,
      unit: '×',
      target: null,
    },
    {
      name: 'eight fingerings on a 1 Hz grid in mathjs, reckoned up',
      value: scriptMs,
      unit: 'ms',
      target: null,
    },
    { name: 'that over this engine', value: scriptMs / eightMs, unit: '×', target: null },
  ]
}

/** One impedance through all slices at a few frequencies: this engine's and mathjs's time, ms a frequency. */
function plainTimes(body: Body): { readonly engineMs: number; readonly mathjsMs: number } {
  const cut = cutBore(highBore, 1, (2 * Math.PI * body.highestHz) / body.speedMPerS)
  const slices = [...cut.before, ...cut.after]
  const table = tableOfSlices(slices, cut.lengthM, air)
  const timed = [100, 400, 900, 1700]
  const mathjsMs = medianMs(5, () => {
    for (const hz of timed) plainImpedance(slices, cut.mouthRadiusM, hz)
  })
  const engineMs = medianMs(500, () => {
    for (const hz of timed) {
      setMouth('unflanged', cut.mouthRadiusM, airAt(air, 1), 2 * Math.PI * hz, load)
      carryBack(table, Math.sqrt(2 * Math.PI * hz), load, 1)
    }
  })
  return { engineMs: engineMs / timed.length, mathjsMs: mathjsMs / timed.length }
}

const load = new Float64Array(4)
const factors = new Float64Array(4)

/** p/U at the lips in mathjs's complex numbers. */
export function plainImpedance(slices: readonly Slice[], mouthRadiusM: number, hz: number): Complex {
  const omega = 2 * Math.PI * hz
  setMouth('unflanged', mouthRadiusM, airAt(air, 1), omega, load)
  let p = complex(load[0]!, load[1]!)
  let u = complex(load[2]!, load[3]!)
  for (const slice of slices.toReversed()) {
    const [a, b, c, d] = plainMatrix(slice, omega)
    const carried = add(multiply(a, p), multiply(b, u)) as Complex
    u = add(multiply(c, p), multiply(d, u)) as Complex
    p = carried
  }
  return divide(p, u) as Complex
}

function plainMatrix(slice: Slice, omega: number): readonly [Complex, Complex, Complex, Complex] {
  const { densityKgPerM3: rho, speedMPerS: c, viscosityPaS, sqrtPrandtl, heatCapacityRatio } = airAt(air, 0)
  if (slice.volumeM3 !== undefined)
    return [complex(1, 0), complex(0, 0), complex(0, (omega * slice.volumeM3) / (rho * c * c)), complex(1, 0)]
  const { lengthM, startRadiusM: r1, endRadiusM: r2 } = slice
  const slantM = Math.hypot(lengthM, r2 - r1)
  const mean = (r1 + r2) / 2
  const area = (Math.PI * mean * mean * 2) / (1 + lengthM / slantM)
  wallFactors(
    'exact',
    mean * Math.sqrt((rho * omega) / viscosityPaS),
    sqrtPrandtl,
    heatCapacityRatio - 1,
    factors,
  )
  const series = multiply(complex(factors[0]!, factors[1]!), complex(0, (omega * rho) / area)) as Complex
  const shunt = multiply(
    complex(factors[2]!, factors[3]!),
    complex(0, (omega * area) / (rho * c * c)),
  ) as Complex
  const gamma = sqrt(multiply(series, shunt) as Complex) as Complex
  const impedance = sqrt(divide(series, shunt) as Complex) as Complex
  const gl = multiply(gamma, slantM) as Complex
  const ch = cosh(gl)
  const sh = sinh(gl)
  if (r1 === r2) return [ch, multiply(impedance, sh) as Complex, divide(sh, impedance) as Complex, ch]
  const x1 = (r1 * slantM) / (r2 - r1)
  const widening = r2 / r1
  const z1 = multiply(impedance, (mean / r1) ** 2) as Complex
  const gx = multiply(gamma, x1) as Complex
  const overX = divide(sh, gx) as Complex
  return [
    subtract(multiply(widening, ch), overX) as Complex,
    multiply(1 / widening, multiply(z1, sh)) as Complex,
    divide(
      add(
        multiply(subtract(widening, divide(1, multiply(gx, gx))), sh),
        multiply(slantM / x1, divide(ch, gx)),
      ),
      z1,
    ) as Complex,
    multiply(1 / widening, add(ch, overX)) as Complex,
  ]
}
