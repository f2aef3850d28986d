import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { warmPartials } from '#shared/sound/warmTone.ts'

describe('a plain warm tone', () => {
  it('refuses a frequency that no tone has', () => {
    for (const hz of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => warmPartials(hz)).toThrow(RangeError)
  })

  it('has a first partial however high it is', () => {
    expect(warmPartials(9000)).toEqual([1])
  })

  it('never goes beyond one, for its amplitudes add up to one and none is negative', () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 12_000, noNaN: true }), (hz) => {
        const partials = warmPartials(hz)
        expect(partials.reduce((sum, amplitude) => sum + amplitude, 0)).toBeCloseTo(1, 12)
        expect(Math.min(...partials)).toBeGreaterThan(0)
      }),
    )
  })

  it('falls from partial to partial, the faster the higher they lie', () => {
    const partials = warmPartials(100)
    for (const [i, amplitude] of partials.slice(1).entries()) expect(amplitude).toBeLessThan(partials[i]!)
    expect(partials[8]! / partials[0]!).toBeCloseTo((1 / 18) * (1 + 1 / 81), 6)
  })

  it('has no partial above five kilohertz but the first', () => {
    expect(warmPartials(400)).toHaveLength(12)
    expect(warmPartials(60)).toHaveLength(16)
  })
})
