import { describe, expect, it } from 'vitest'
import { loopSentence } from '#shared/bench/readings/loopSentence.ts'

const loop = {
  value: 258.6,
  standardError: 1.4,
  targetMm: 265,
  changeMm: 6.4,
  movementMm: 3.2,
  changeStandardErrorMm: 1.2,
  exactMm: 265,
}

describe('The sentence on a fitted loop', () => {
  it('keeps tube and movement apart', () => {
    expect(loopSentence('Loop 3', loop)).toBe(
      'Loop 3 is 6.4 ± 1.2 mm of tube short: move its slide out 3.2 mm, or cut the new loop to 265.0 mm of tube.',
    )
  })

  it('turns round for a loop that is long', () => {
    expect(loopSentence('Loop 3', { ...loop, changeMm: -6.4, movementMm: -3.2 })).toContain(
      'is 6.4 ± 1.2 mm of tube long: move its slide in 3.2 mm',
    )
  })

  it('tells the exact length too where another is wanted', () => {
    expect(loopSentence('Loop 5', { ...loop, exactMm: 243.04 })).toMatch(
      / to 265\.0 mm of tube\. Exact for its own fingering it would be 243\.0 mm\.$/,
    )
    expect(loopSentence('Loop 3', { ...loop, exactMm: 265.04 })).not.toContain('Exact')
  })

  it('without a target says how long the loop is', () => {
    const bare = {
      ...loop,
      exactMm: null,
      targetMm: null,
      changeMm: null,
      movementMm: null,
      changeStandardErrorMm: null,
    }
    expect(loopSentence('Loop 3', bare)).toBe('Loop 3 is 258.6 ± 1.4 mm of tube.')
  })
})
