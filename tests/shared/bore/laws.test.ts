import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { keefeAir } from '#shared/air/keefeAir.ts'
import { prepareBody } from '#shared/bore/body.ts'
import { prepareWaves } from '#shared/bore/boreWaves.ts'
import { carryBack } from '#shared/bore/carryBack.ts'
import { cutBore } from '#shared/bore/cutBore.ts'
import { impedanceAt } from '#shared/bore/inputImpedance.ts'
import { resonancesOf } from '#shared/bore/resonances.ts'
import type { BoreConditions, BoreSection, Insert } from '#shared/bore/section.ts'
import { tableOfSlices } from '#shared/bore/sliceTable.ts'
import { demand, highBore } from './bores.ts'

const air: BoreConditions = { temperatureC: 24 }
const diameter = fc.double({ min: 3, max: 200, noNaN: true })
const length = fc.double({ min: 200, max: 1500, noNaN: true })
const hertz = fc.double({ min: 20, max: 3000, noNaN: true })
const conditions = fc.record({
  temperatureC: fc.double({ min: 0, max: 40, noNaN: true }),
  waveFronts: fc.constantFrom('plane' as const, 'spherical' as const),
  losses: fc.constantFrom('exact' as const, 'wideTube' as const, 'none' as const),
})
const piece: fc.Arbitrary<BoreSection> = fc.oneof(
  fc.record({ kind: fc.constant('cylinder' as const), lengthMm: length, diameterMm: diameter }),
  fc.record({
    kind: fc.constant('cone' as const),
    lengthMm: length,
    startDiameterMm: diameter,
    endDiameterMm: diameter,
  }),
)

/** Re A, Im A, Re C, Im C, Re B, Im B, Re D, Im D of a bore's slices. */
function matrixOf(sections: readonly BoreSection[], given: BoreConditions, hz: number): Float64Array {
  const cut = cutBore(sections, 0, 40)
  const state = Float64Array.of(1, 0, 0, 0, 0, 0, 1, 0)
  carryBack(tableOfSlices(cut.after, cut.lengthM, given), Math.sqrt(2 * Math.PI * hz), state, 2)
  return state
}

/** AD − BC, and the size of its terms. */
function determinantOf([aRe, aIm, cRe, cIm, bRe, bIm, dRe, dIm]: Float64Array) {
  const re = aRe! * dRe! - aIm! * dIm! - bRe! * cRe! + bIm! * cIm!
  const im = aRe! * dIm! + aIm! * dRe! - bRe! * cIm! - bIm! * cRe!
  const size = 1 + Math.hypot(aRe!, aIm!) * Math.hypot(dRe!, dIm!)
  return { re, im, size }
}

describe('the matrices', () => {
  test('every bore is reciprocal: its determinant is 1', () => {
    fc.assert(
      fc.property(
        fc.array(piece, { minLength: 1, maxLength: 5 }),
        conditions,
        hertz,
        (sections, given, hz) => {
          const { re, im, size } = determinantOf(matrixOf(sections, given, hz))
          expect(Math.hypot(re - 1, im) / size).toBeLessThan(1e-9)
        },
      ),
      { numRuns: 300 },
    )
  })

  test('reversing a cone exchanges A and D and keeps B and C', () => {
    fc.assert(
      fc.property(length, diameter, diameter, conditions, hertz, (lengthMm, one, other, given, hz) => {
        const cone = (startDiameterMm: number, endDiameterMm: number) =>
          matrixOf([{ kind: 'cone', lengthMm, startDiameterMm, endDiameterMm }], given, hz)
        const there = cone(one, other)
        const back = cone(other, one)
        for (const [i, j] of [
          [0, 6],
          [1, 7],
          [2, 2],
          [3, 3],
          [4, 4],
          [5, 5],
          [6, 0],
          [7, 1],
        ] as const)
          expect(Math.abs(there[i]! - back[j]!)).toBeLessThan(
            1e-7 * Math.hypot(there[i & ~1]!, there[i | 1]!) + 1e-12,
          )
      }),
    )
  })

  test('a cylinder cut in two is the same cylinder', () => {
    fc.assert(
      fc.property(
        length,
        diameter,
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        hertz,
        (lengthMm, diameterMm, share, hz) => {
          const whole = matrixOf([{ kind: 'cylinder', lengthMm, diameterMm }], air, hz)
          const cut = matrixOf(
            [
              { kind: 'cylinder', lengthMm: lengthMm * share, diameterMm },
              { kind: 'cylinder', lengthMm: lengthMm * (1 - share), diameterMm },
            ],
            air,
            hz,
          )
          // A and D beside 1, B beside the characteristic impedance, C beside its inverse.
          const impedance = 412 / (Math.PI * (diameterMm / 2000) ** 2)
          for (const [k, scale] of [1, 1 / impedance, impedance, 1].entries()) {
            const apart = Math.hypot(whole[2 * k]! - cut[2 * k]!, whole[2 * k + 1]! - cut[2 * k + 1]!)
            const size = Math.hypot(whole[0]!, whole[1]!) + 1
            expect(apart / scale / size).toBeLessThan(1e-11)
          }
        },
      ),
    )
  })
})

describe('the impedance', () => {
  test('no passive bore gives energy back: Re Z is above 0', () => {
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 4 }), conditions, (sections, given) => {
        const body = demand(prepareBody(sections, given, { highestMode: 4, sliceErrorHz: 1 }))
        const { re } = demand(impedanceAt(body, [], [17, 60, 211, 700, 1999]))
        for (const value of re) expect(value).toBeGreaterThan(0)
      }),
      { numRuns: 40 },
    )
  })

  test('warmer air raises every peak of a bore', () => {
    const peaks = (temperatureC: number) =>
      demand(resonancesOf(demand(prepareBody(highBore, { temperatureC })), [])).peaks.map(({ hz }) => hz)
    const cool = peaks(20)
    for (const [i, hz] of peaks(25).entries()) expect(hz).toBeGreaterThan(cool[i]!)
  })

  test('a straight line of temperatures lies between its two ends', () => {
    const peaks = (given: BoreConditions) =>
      demand(resonancesOf(demand(prepareBody(highBore, given)), []))
        .peaks.slice(0, 10)
        .map(({ hz }) => hz)
    const cool = peaks({ temperatureC: 20 })
    const warm = peaks({ temperatureC: 30 })
    for (const [i, hz] of peaks({ temperatureC: 30, bellTemperatureC: 20 }).entries()) {
      expect(hz).toBeGreaterThan(cool[i]!)
      expect(hz).toBeLessThan(warm[i]!)
    }
    expect(peaks({ temperatureC: 30, bellTemperatureC: 30 })).toEqual(warm)
  })

  // 28 − (28 − 20) · 250 / 1000
  test('the loops have the air of the place they stand at', () => {
    const tube = (lengthMm: number): BoreSection => ({ kind: 'cylinder', lengthMm, diameterMm: 12 })
    const sections: readonly BoreSection[] = [tube(250), { kind: 'valves', diameterMm: 12 }, tube(750)]
    const cooling = { temperatureC: 28, bellTemperatureC: 20 }
    expect(prepareWaves(sections, cooling, 0, 36).place.air).toEqual(keefeAir(26))
  })
})

describe('the loops', () => {
  const body = demand(prepareBody(highBore, air))
  const peaks = (inserts: readonly Insert[]) => demand(resonancesOf(body, inserts)).peaks.map(({ hz }) => hz)

  test('a loop of length 0 is no loop', () => {
    expect(peaks([{ lengthMm: 0, diameterMm: 9 }])).toEqual(peaks([]))
  })

  test('loops of one bore give the same peaks in any order', () => {
    const one = { lengthMm: 82.3, diameterMm: 11.66 }
    const two = { lengthMm: 169.5, diameterMm: 11.66 }
    const swapped = peaks([two, one])
    for (const [i, hz] of peaks([one, two]).entries()) expect(hz).toBeCloseTo(swapped[i]!, 6)
  })

  test('loops of two bores give other peaks in the other order', () => {
    const narrow = { lengthMm: 250, diameterMm: 10 }
    const wide = { lengthMm: 250, diameterMm: 13 }
    expect(Math.abs(peaks([narrow, wide])[3]! - peaks([wide, narrow])[3]!)).toBeGreaterThan(0.5)
  })

  test.each([11.66, 12.5])(
    'a loop of %d mm bore is the same as a cylinder of its length in the bore',
    (diameterMm) => {
      const at = highBore.findIndex(({ kind }) => kind === 'valves') + 1
      const built = highBore.toSpliced(at, 0, { kind: 'cylinder', lengthMm: 169.5, diameterMm })
      const wanted = demand(resonancesOf(demand(prepareBody(built, air)), [])).peaks
      for (const [i, hz] of peaks([{ lengthMm: 169.5, diameterMm }])
        .slice(0, 10)
        .entries())
        expect(Math.abs(hz - wanted[i]!.hz)).toBeLessThan(0.01)
    },
  )

  test('a bow raises the modes, a tight one more than a wide one', () => {
    const loop = { lengthMm: 262, diameterMm: 11.66 }
    const raised = (bendRadiusMm: number) => {
      const straight = peaks([loop])
      return peaks([{ ...loop, bendRadiusMm }]).reduce((sum, hz, i) => sum + Math.log(hz / straight[i]!), 0)
    }
    expect(raised(40)).toBeGreaterThan(0)
    expect(raised(10)).toBeGreaterThan(2 * raised(40))
  })

  test('a loop of six bodies leaves no mode out', () => {
    const long = peaks([{ lengthMm: 6 * body.lengthMm, diameterMm: 11.66 }])
    const spacing = long.slice(1).map((hz, i) => hz - long[i]!)
    expect(long).toHaveLength(16)
    expect(Math.max(...spacing) / Math.min(...spacing)).toBeLessThan(1.8)
  })
})
