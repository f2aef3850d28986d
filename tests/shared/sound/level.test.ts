import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gainOfLevel, keptLevel, levelLimit, startingLevel } from '#shared/sound/level.ts'

describe('the level', () => {
  it('never goes beyond the limit, whatever it is set to', () => {
    fc.assert(
      fc.property(fc.double(), (level) => {
        expect(gainOfLevel(level)).toBeGreaterThanOrEqual(0)
        expect(gainOfLevel(level)).toBeLessThanOrEqual(levelLimit)
      }),
    )
    expect(gainOfLevel(1)).toBe(levelLimit)
  })

  it('is silent at its lower end, and for what is no number', () => {
    expect(gainOfLevel(0)).toBe(0)
    expect(gainOfLevel(Number.NaN)).toBe(0)
  })

  it('starts low: below a twentieth of full scale', () => {
    expect(gainOfLevel(startingLevel)).toBeLessThan(1 / 20)
  })

  it.each([undefined, null, '0.5', Number.NaN, -0.1, 1.1, {}])('starts anew from a kept %s', (kept) => {
    expect(keptLevel(kept)).toBe(startingLevel)
  })

  it('is kept as it was set', () => {
    expect([0, 0.7, 1].map(keptLevel)).toEqual([0, 0.7, 1])
  })
})
