import { describe, expect, test } from 'vitest'
import { prepareBody } from '#shared/bore/body.ts'
import { carryBack } from '#shared/bore/carryBack.ts'
import { cutBore } from '#shared/bore/cutBore.ts'
import { impedanceAt, impedanceCurve } from '#shared/bore/inputImpedance.ts'
import { resonancesOf } from '#shared/bore/resonances.ts'
import type { WaveFronts } from '#shared/bore/section.ts'
import { tableOfSlices } from '#shared/bore/sliceTable.ts'
import { demand, highBore } from './bores.ts'

const air = { temperatureC: 24 }

/** p and U at the lips for U = 1, p = 0 at the rim. */
function lipsAt(halvings: number, waveFronts: WaveFronts, hz: number): Float64Array {
  const cut = cutBore(highBore.slice(-1), halvings, 38)
  const state = Float64Array.of(0, 0, 1, 0)
  carryBack(
    tableOfSlices(cut.after, cut.lengthM, { ...air, waveFronts }),
    Math.sqrt(2 * Math.PI * hz),
    state,
    1,
  )
  return state
}

test.each([
  ['plane', 300],
  ['plane', 1200],
  ['spherical', 300],
  ['spherical', 1200],
] as const)(
  'with %s fronts at %d Hz every halving of the slices leaves a quarter of the error',
  (fronts, hz) => {
    const limit = lipsAt(9, fronts, hz)
    const error = (halvings: number) => {
      const state = lipsAt(halvings, fronts, hz)
      return Math.hypot(state[0]! - limit[0]!, state[1]! - limit[1]!)
    }
    expect(error(1) / error(2)).toBeCloseTo(4, 0)
    expect(error(2) / error(3)).toBeCloseTo(4, 0)
  },
)

describe('the slices of a body', () => {
  test('what the report says is left is no less than what ever finer slices change', () => {
    const coarse = demand(prepareBody(highBore, air))
    const fine = demand(prepareBody(highBore, air, { sliceErrorHz: 1e-5 }))
    expect(coarse.slicing.met).toBe(true)
    expect(coarse.slicing.errorHz).toBeLessThanOrEqual(0.01)
    expect(fine.slicing.slices).toBeGreaterThan(3 * coarse.slicing.slices)
    const wanted = demand(resonancesOf(fine, [])).peaks
    for (const [i, { hz }] of demand(resonancesOf(coarse, [])).peaks.entries())
      expect(Math.abs(hz - wanted[i]!.hz)).toBeLessThan(coarse.slicing.errorHz)
  })

  test('a cylinder needs one', () => {
    const body = demand(prepareBody([{ kind: 'cylinder', lengthMm: 1400, diameterMm: 11 }], air))
    expect(body.slicing).toMatchObject({ slices: 1, changeHz: 0, met: true })
  })
})

describe('the samples of a body', () => {
  const body = demand(prepareBody(highBore, air))
  const inserts = [{ lengthMm: 1300, diameterMm: 11.66 }]

  test('agree with the impedance reckoned slice by slice to a part in ten thousand', () => {
    const drawn = demand(impedanceCurve(body, inserts, 777))
    const exact = demand(impedanceAt(body, inserts, [...drawn.hz]))
    for (const [i, re] of exact.re.entries()) {
      const apart = Math.hypot(drawn.re[i]! - re, drawn.im[i]! - exact.im[i]!)
      expect(apart / Math.hypot(re, exact.im[i]!)).toBeLessThan(1e-4)
    }
  })

  test('every peak is a maximum of the exact impedance, and no maximum of a fine scan is left out', () => {
    const { peaks } = demand(resonancesOf(body, inserts))
    const stepHz = 0.25
    const scanned = Array.from({ length: 3500 }, (_, i) => 5 + i * stepHz)
    const { re, im } = demand(impedanceAt(body, inserts, scanned))
    const size = scanned.map((_, i) => Math.hypot(re[i]!, im[i]!))
    const maxima = scanned.filter(
      (_, i) => size[i]! > (size[i - 1] ?? size[0]!) && size[i]! >= (size[i + 1] ?? 0),
    )
    expect(maxima.length).toBeGreaterThan(12)
    const found = peaks.map(({ hz }) => hz).filter((hz) => hz < scanned.at(-1)!)
    expect(found).toHaveLength(maxima.length)
    for (const [i, hz] of maxima.entries()) expect(Math.abs(hz - found[i]!)).toBeLessThan(stepHz)
  })

  test('a peak is refined to 0.01 Hz: the exact impedance falls on both sides of it', () => {
    for (const { hz, heightPaSPerM3 } of demand(resonancesOf(body, [])).peaks.slice(0, 10)) {
      const { re, im } = demand(impedanceAt(body, [], [hz - 0.01, hz, hz + 0.01]))
      const [left, top, right] = [0, 1, 2].map((i) => Math.hypot(re[i]!, im[i]!)) as [number, number, number]
      expect(top).toBeGreaterThan(left)
      expect(top).toBeGreaterThan(right)
      expect(heightPaSPerM3 / top).toBeCloseTo(1, 6)
    }
  })

  test('at half the width to either side the power has fallen to half', () => {
    const peak = demand(resonancesOf(body, [])).peaks[3]!
    const hz = Array.from({ length: 2001 }, (_, i) => peak.hz - 20 + i * 0.02)
    const { re, im } = demand(impedanceAt(body, [], hz))
    const half = hz.filter((_, i) => re[i]! ** 2 + im[i]! ** 2 >= peak.heightPaSPerM3 ** 2 / 2)
    expect(half.at(-1)! - half[0]!).toBeCloseTo(peak.widthHz!, 1)
  })
})
