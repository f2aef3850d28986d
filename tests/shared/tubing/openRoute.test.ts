import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { endCorrectionMm, fundamentalHz, openLengthMm } from '#shared/tubing/openRoute.ts'

describe('the open route', () => {
  it('is half a wave of the fundamental long', () => {
    expect(openLengthMm(345, 57.5)).toBe(3000)
  })

  it('is some 3.97 m for a bass in F in air at 24 degrees', () => {
    expect(openLengthMm(346.5, 43.654)).toBeCloseTo(3968.7, 1)
  })

  it('gives its fundamental back', () => {
    const speed = fc.double({ min: 300, max: 400, noNaN: true })
    const hz = fc.double({ min: 10, max: 2000, noNaN: true })
    fc.assert(
      fc.property(speed, hz, (mps, f1) => {
        expect(fundamentalHz(mps, openLengthMm(mps, f1)) / f1).toBeCloseTo(1, 12)
      }),
    )
  })

  it('is longer than the bore by what mouthpiece and bell add', () => {
    expect(endCorrectionMm(3968.7, 3790)).toBeCloseTo(178.7, 9)
    expect(endCorrectionMm(2000, 2100)).toBe(-100)
  })
})
