import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { loopsInCompany } from '#shared/tubing/loopInCompany.ts'
import { loopForDropMm } from '#shared/tubing/requiredLength.ts'

describe('a loop in company', () => {
  it('that fits alone misses nothing alone, and more with every semitone', () => {
    const rows = loopsInCompany(2000, loopForDropMm(2000, 3), 3, 6)
    expect(rows.map(({ loweredSemitones }) => loweredSemitones)).toEqual([0, 1, 2, 3, 4, 5, 6])
    expect(rows[0]).toMatchObject({ missingMm: 0, errorCents: 0 })
    for (const [i, { missingMm, errorCents }] of rows.slice(1).entries()) {
      expect(missingMm).toBeGreaterThan(rows[i]!.missingMm)
      expect(errorCents).toBeGreaterThan(rows[i]!.errorCents)
    }
  })

  it('has the figures of a hand calculation: 3 semitones after 2, on 2000 mm', () => {
    // 2000·2^(2/12) = 2244.924; ·(2^(3/12) − 1) = 424.755; the loop has 378.414: 46.341 short of 2669.680
    const row = loopsInCompany(2000, 378.4142, 3, 2)[2]!
    expect(row.neededMm).toBeCloseTo(424.755, 2)
    expect(row.missingMm).toBeCloseTo(46.341, 2)
    expect(row.errorCents).toBeCloseTo(30.315, 3)
  })

  it('that is too long alone misses less than nothing, and no company is asked for with 0 semitones', () => {
    const rows = loopsInCompany(2000, 400, 3, 0)
    expect(rows).toHaveLength(1)
    expect(rows[0]!.missingMm).toBeLessThan(0)
    expect(rows[0]!.errorCents).toBeLessThan(0)
  })

  it('needs as many times its tube as the instrument is longer', () => {
    const length = fc.double({ min: 500, max: 9000, noNaN: true })
    fc.assert(
      fc.property(length, fc.integer({ min: 1, max: 7 }), (openMm, semitones) => {
        for (const row of loopsInCompany(openMm, 100, semitones, 12)) {
          const alone = loopForDropMm(openMm, semitones)
          expect(row.neededMm / alone).toBeCloseTo(2 ** (row.loweredSemitones / 12), 9)
        }
      }),
    )
  })
})
