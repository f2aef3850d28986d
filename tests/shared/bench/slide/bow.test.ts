import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { acrossMm, bendFactor, bowAcousticMm, bowTubeMm } from '#shared/bench/slide/bow.ts'

describe('A bow', () => {
  it('is πR of tube: 38 mm of spacing make 3.14159 × 19 = 59.690', () => {
    expect(bowTubeMm({ legSpacingMm: 38 })).toBeCloseTo(59.6903, 4)
  })

  it('of two quarters has straights: π/2 × (15 + 19) + (50 − 34) across + (19 − 15) to the tighter = 53.407 + 20', () => {
    const bow = { legSpacingMm: 50, quarterRadiiMm: [15, 19] } as const
    expect(acrossMm(bow)).toBe(16)
    expect(bowTubeMm(bow)).toBeCloseTo(73.4071, 4)
  })

  it('whose quarters fill the spacing is the half circle', () => {
    expect(bowTubeMm({ legSpacingMm: 38, quarterRadiiMm: [19, 19] })).toBeCloseTo(
      bowTubeMm({ legSpacingMm: 38 }),
      12,
    )
  })
})

describe('The bend correction', () => {
  // a/R = 8.6/19 = 0.452632, its square 0.204875; sqrt(0.795125) = 0.891698; (1 + that)/2 = 0.945849; root 0.972548
  it('counts a bend of 19 mm in a bore of 17.2 mm at 0.97255 of its centre line', () => {
    expect(bendFactor(8.6, 19)).toBeCloseTo(0.972548, 5)
    expect(bowAcousticMm({ legSpacingMm: 38 }, 17.2)).toBeCloseTo(59.6903 * 0.972548, 3)
  })

  it('leaves the piece across as it is', () => {
    const bow = { legSpacingMm: 50, quarterRadiiMm: [19, 19] } as const
    expect(bowAcousticMm(bow, 17.2)).toBeCloseTo(bowAcousticMm({ legSpacingMm: 38 }, 17.2) + 12, 9)
  })

  it('never lengthens, never takes more than the root of a half, and is nothing for a thin tube', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        (a, r) => {
          const factor = bendFactor(a, r)
          return factor <= 1 && factor >= Math.SQRT1_2
        },
      ),
    )
    expect(bendFactor(0.01, 1000)).toBeCloseTo(1, 9)
  })
})
