import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { toleranceBands } from '#shared/solve/toleranceBands.ts'
import { toleranceNeeded } from '#shared/solve/toleranceNeeded.ts'

const routes = [
  { name: '0', loops: [], routeLengthMm: 2000, errorCents: 0 },
  { name: '1', loops: ['L1'], routeLengthMm: 2250, errorCents: -4 },
  { name: '1-2-3', loops: ['L1', 'L2', 'L3'], routeLengthMm: 2810, errorCents: 11 },
]
const made = { bodyMm: 2, loopsMm: { L1: 1, L2: 0.5, L3: 1.5 } }
const temperature = { lowestCents: -20, highestCents: 10 }
const cents = (lengthMm: number, toMm: number) => 1200 * Math.log2(lengthMm / toMm)

describe('toleranceBands', () => {
  it('keeps each error as it is when everything is exact', () => {
    for (const [at, band] of toleranceBands(routes, { bodyMm: 0, loopsMm: {} }).entries()) {
      const error = { lowestCents: routes[at]!.errorCents, highestCents: routes[at]!.errorCents }
      expect(band).toEqual({ name: routes[at]!.name, worstCase: error, rootSumSquare: error })
    }
  })

  it('adds up every part of a route and the temperature in the worst case', () => {
    const [open, first, all] = toleranceBands(routes, made, temperature)
    expect(open!.worstCase.lowestCents).toBeCloseTo(cents(2000, 2002) - 20, 9)
    expect(first!.worstCase.highestCents).toBeCloseTo(-4 + cents(2250, 2247) + 10, 9)
    expect(all!.worstCase.lowestCents).toBeCloseTo(11 + cents(2810, 2815) - 20, 9)
    expect(all!.worstCase.highestCents).toBeCloseTo(11 + cents(2810, 2805) + 10, 9)
  })

  it('takes the root of the sum of squares, half the temperature range being one of them', () => {
    const all = toleranceBands(routes, made, temperature)[2]!
    const perMm = 1200 / Math.LN2 / 2810
    const half = Math.sqrt((2 ** 2 + 1 + 0.5 ** 2 + 1.5 ** 2) * perMm ** 2 + 15 ** 2)
    expect(all.rootSumSquare.lowestCents).toBeCloseTo(11 - 5 - half, 9)
    expect(all.rootSumSquare.highestCents).toBeCloseTo(11 - 5 + half, 9)
  })

  it('takes the error of a reading as one doubt more, the same either way on every fingering', () => {
    const withError = toleranceBands(routes, made, temperature, 3)
    for (const [at, { worstCase }] of toleranceBands(routes, made, temperature).entries()) {
      expect(withError[at]!.worstCase.lowestCents).toBeCloseTo(worstCase.lowestCents - 3, 9)
      expect(withError[at]!.worstCase.highestCents).toBeCloseTo(worstCase.highestCents + 3, 9)
    }
    const perMm = 1200 / Math.LN2 / 2810
    const half = Math.sqrt((2 ** 2 + 1 + 0.5 ** 2 + 1.5 ** 2) * perMm ** 2 + 15 ** 2 + 3 ** 2)
    expect(withError[2]!.rootSumSquare.lowestCents).toBeCloseTo(11 - 5 - half, 9)
    expect(withError[2]!.rootSumSquare.highestCents).toBeCloseTo(11 - 5 + half, 9)
    const exact = toleranceBands(routes.slice(0, 1), { bodyMm: 0, loopsMm: {} }, undefined, 3)[0]!
    expect(exact.worstCase).toEqual({ lowestCents: -3, highestCents: 3 })
    expect(exact.rootSumSquare).toEqual({ lowestCents: -3, highestCents: 3 })
  })

  it('is never wider by root-sum-square than in the worst case, but for the bend of the logarithm', () => {
    const tolerance = fc.double({ min: 0, max: 5, noNaN: true })
    fc.assert(
      fc.property(tolerance, tolerance, tolerance, (bodyMm, L1, L2) => {
        for (const band of toleranceBands(routes, { bodyMm, loopsMm: { L1, L2 } })) {
          const worst = band.worstCase.highestCents - band.worstCase.lowestCents
          expect(band.rootSumSquare.highestCents - band.rootSumSquare.lowestCents).toBeLessThanOrEqual(
            worst + 1e-9,
          )
        }
      }),
    )
  })

  it('throws for a reading error that is none', () => {
    for (const cents of [Number.NaN, Number.POSITIVE_INFINITY, -1]) {
      expect(() => toleranceBands(routes, made, temperature, cents)).toThrow(RangeError)
      expect(() => toleranceNeeded(routes, made, 30, temperature, cents)).toThrow(RangeError)
    }
  })

  it('throws for a tolerance that is none, or as long as the route', () => {
    expect(() => toleranceBands(routes, { bodyMm: Number.NaN, loopsMm: {} })).toThrow(RangeError)
    expect(() => toleranceBands(routes, { bodyMm: -1, loopsMm: {} })).toThrow(RangeError)
    expect(() => toleranceBands(routes, { bodyMm: 2000, loopsMm: {} })).toThrow(RangeError)
  })
})

describe('toleranceNeeded', () => {
  const within = 30

  it.each([0, 4])(
    'is the tolerance at which the bands just touch the limit, with readings %d cents off',
    (off) => {
      const needed = toleranceNeeded(routes, made, within, temperature, off)
      for (const kind of ['worstCase', 'rootSumSquare'] as const) {
        const need = needed[kind]
        if (need.kind !== 'found') throw new Error(need.kind)
        const share = need.shareOfGiven
        const at = {
          bodyMm: made.bodyMm * share,
          loopsMm: { L1: made.loopsMm.L1 * share, L2: made.loopsMm.L2 * share, L3: made.loopsMm.L3 * share },
        }
        const farthest = toleranceBands(routes, at, temperature, off).map((band) => ({
          name: band.name,
          cents: Math.max(-band[kind].lowestCents, band[kind].highestCents),
        }))
        farthest.sort((a, b) => b.cents - a.cents)
        expect(farthest[0]!.cents).toBeCloseTo(within, 9)
        expect(farthest[0]!.name).toBe(need.fingering)
      }
    },
  )

  it('is in millimetres when every part is given 1', () => {
    const open = routes.slice(0, 1)
    const need = toleranceNeeded(open, { bodyMm: 1, loopsMm: {} }, 1).rootSumSquare
    expect(need).toMatchObject({ kind: 'found', fingering: '0' })
    expect(need.kind === 'found' && need.shareOfGiven).toBeCloseTo((2000 * Math.LN2) / 1200, 9)
  })

  // of 0, −4 and 11 cents two are outside of 3, by 1 and by 8
  it.each([
    ['last', routes],
    ['first', [...routes].reverse()],
  ])('names the fingering farthest outside when no tolerance will do, asked %s', (_, asked) => {
    const farthest = { kind: 'none', fingering: '1-2-3', outsideByCents: 8 }
    expect(toleranceNeeded(asked, made, 3)).toEqual({ worstCase: farthest, rootSumSquare: farthest })
  })

  it('is none when the readings alone are farther off than that', () => {
    const needed = toleranceNeeded(routes.slice(0, 1), made, 10, { lowestCents: -8, highestCents: 8 }, 6.5)
    expect(needed.worstCase).toMatchObject({ kind: 'none', fingering: '0', outsideByCents: 4.5 })
    // sqrt(8² + 6.5²) is 10.308
    expect(needed.rootSumSquare.kind === 'none' && needed.rootSumSquare.outsideByCents).toBeCloseTo(0.308, 3)
  })

  it('is unlimited when nothing in the chosen routes has a tolerance', () => {
    const exact = { bodyMm: 0, loopsMm: { L9: 1 } }
    expect(toleranceNeeded(routes, exact, 30).worstCase).toEqual({ kind: 'unlimited' })
    expect(toleranceNeeded([], made, 30).rootSumSquare).toEqual({ kind: 'unlimited' })
  })
})
