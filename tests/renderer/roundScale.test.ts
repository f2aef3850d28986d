import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { multiples, roundDown, roundUp } from '../../src-renderer/look/roundScale.ts'

const value = fc.double({ min: 1e-6, max: 1e9, noNaN: true })
const isRound = (step: number): boolean => /^[125](?:\.0+)?e/.test(step.toExponential(9))

describe('a round value', () => {
  it.each([
    [0.21, 0.5, 0.2],
    [1, 1, 1],
    [1.5, 2, 1],
    [140, 200, 100],
    [5, 5, 5],
    [7, 10, 5],
    [0.3 - 0.1, 0.2, 0.2],
    [1000, 1000, 1000],
  ])('for %f is %f at the least and %f at the most', (of, up, down) => {
    expect(roundUp(of)).toBeCloseTo(up, 12)
    expect(roundDown(of)).toBeCloseTo(down, 12)
  })

  it('is 1, 2 or 5 times a power of ten, the nearest there is', () => {
    fc.assert(
      fc.property(value, (of) => {
        const [up, down] = [roundUp(of), roundDown(of)]
        expect([up, down].every(isRound)).toBe(true)
        expect(up / of).toBeGreaterThanOrEqual(1 - 1e-8)
        expect(up / of).toBeLessThan(2.5 + 1e-8)
        expect(of / down).toBeGreaterThanOrEqual(1 - 1e-8)
        expect(of / down).toBeLessThan(2.5 + 1e-8)
      }),
    )
  })
})

describe('the multiples of a step', () => {
  it('are those within the range, its ends among them', () => {
    expect(multiples(5, -6, 10)).toEqual([-5, 0, 5, 10])
    expect(multiples(0.1, 0.1, 0.3)).toHaveLength(3)
    expect(multiples(5, 1, 4)).toEqual([])
  })
})
