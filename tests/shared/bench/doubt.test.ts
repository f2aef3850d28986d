import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { routeDoubt } from '#shared/bench/doubt.ts'

describe('The doubt of a route', () => {
  it('is nothing when everything is exact', () => {
    expect(routeDoubt(3000, {})).toEqual({ worstCents: [0, 0], rootSumSquareCents: [0, 0] })
  })

  it('refuses tolerances that use the route up', () => {
    expect(() => routeDoubt(10, { tubeTolerancesMm: [6, 6] })).toThrow(RangeError)
  })

  // 3 + 4 = 7 mm on 3000: 1200·log2(3000/3007) = −4.0349; alone 1.7304 and 2.3067, root of squares 2.8837
  it('adds tolerances in the worst case and their squares otherwise', () => {
    const { worstCents, rootSumSquareCents } = routeDoubt(3000, { tubeTolerancesMm: [3, 4] })
    expect(worstCents[0]).toBeCloseTo(-4.0349, 3)
    expect(rootSumSquareCents[0]).toBeCloseTo(-2.8837, 2)
  })

  // 1200·log2(340/345) = −25.27, 1200·log2(350/345) = 24.91, and 3 of reading
  it('takes the air and the reading in cents', () => {
    const doubts = { speedsOfSound: [340, 345, 350], readingErrorCents: 3 } as const
    const { worstCents, rootSumSquareCents } = routeDoubt(3000, doubts)
    expect(worstCents[0]).toBeCloseTo(-28.2734, 2)
    expect(worstCents[1]).toBeCloseTo(27.9098, 2)
    expect(rootSumSquareCents[1]).toBeCloseTo(Math.hypot(24.9098, 3), 2)
  })

  it('is never wider by root-sum-square than in the worst case', () => {
    const tolerances = fc.array(fc.double({ min: 0, max: 20, noNaN: true }), { maxLength: 8 })
    fc.assert(
      fc.property(tolerances, (tubeTolerancesMm) => {
        const { worstCents, rootSumSquareCents } = routeDoubt(2000, { tubeTolerancesMm })
        return rootSumSquareCents[1] <= worstCents[1] + 1e-9 && rootSumSquareCents[0] >= worstCents[0] - 1e-9
      }),
    )
  })
})
