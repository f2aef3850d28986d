import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  compensatingLoopMm,
  dropOfLoopCents,
  loopForDropMm,
  requiredLengthMm,
  routeErrorCents,
} from '#shared/tubing/requiredLength.ts'
import { slideMovementMm, tubeForCentsMm } from '#shared/tubing/slideMovement.ts'

const openMm = fc.double({ min: 100, max: 9000, noNaN: true })
const semitones = fc.double({ min: -12, max: 24, noNaN: true })

describe('the required length', () => {
  it('is twice the open length an octave down, half of it an octave up, and itself for no drop', () => {
    expect([12, -12, 0].map((drop) => requiredLengthMm(2000, drop))).toEqual([4000, 1000, 2000])
  })

  it('is the open length and the loop for the drop', () => {
    fc.assert(
      fc.property(openMm, semitones, (mm, drop) => {
        expect(mm + loopForDropMm(mm, drop)).toBeCloseTo(requiredLengthMm(mm, drop), 9)
        expect(dropOfLoopCents(mm, loopForDropMm(mm, drop))).toBeCloseTo(100 * drop, 6)
      }),
    )
  })
})

describe('a compensating loop', () => {
  it('makes up what the pair lacks: 82.0 mm for 2 and 5 semitones on 2 m', () => {
    const [tone, fourth] = [loopForDropMm(2000, 2), loopForDropMm(2000, 5)]
    expect(compensatingLoopMm(2000, 2, tone, 5, fourth)).toBeCloseTo(82.01, 2)
  })

  it('is the tone of the longer instrument less the tone of the open one, when both loops are exact', () => {
    fc.assert(
      fc.property(openMm, (mm) => {
        const extra = compensatingLoopMm(mm, 2, loopForDropMm(mm, 2), 5, loopForDropMm(mm, 5))
        expect(extra).toBeCloseTo(loopForDropMm(requiredLengthMm(mm, 5), 2) - loopForDropMm(mm, 2), 6)
      }),
    )
  })
})

describe('the error of a route', () => {
  it('is positive, sharp, when the route is short', () => {
    expect(routeErrorCents(2828.43, 2742.26)).toBeCloseTo(53.6, 1)
    expect(routeErrorCents(1000, 2000)).toBe(-1200)
    expect(routeErrorCents(2000, 2000)).toBe(0)
  })

  it('goes to zero by the tube worked out for it, half of it in slide movement', () => {
    const cents = fc.double({ min: -100, max: 100, noNaN: true })
    fc.assert(
      fc.property(openMm, cents, (requiredMm, errorCents) => {
        const routeMm = requiredMm / 2 ** (errorCents / 1200)
        const tubeMm = tubeForCentsMm(routeMm, errorCents)
        expect(routeErrorCents(requiredMm, routeMm)).toBeCloseTo(errorCents, 6)
        expect(routeErrorCents(requiredMm, routeMm + tubeMm)).toBeCloseTo(0, 6)
        expect(2 * slideMovementMm(routeMm, errorCents)).toBeCloseTo(tubeMm, 9)
      }),
    )
  })

  it('of ten cents on 2 m is 11.6 mm of tube and 5.8 mm of slide, out when sharp and in when flat', () => {
    expect(tubeForCentsMm(2000, 10)).toBeCloseTo(11.59, 2)
    expect(slideMovementMm(2000, 10)).toBeCloseTo(5.79, 2)
    expect(slideMovementMm(2000, -10)).toBeCloseTo(-5.76, 2)
  })
})
