import { describe, expect, it } from 'vitest'
import { loopSentence } from '#shared/bench/readings/loopSentence.ts'
import type { FittedLoop } from '#shared/bench/readings/readingsFit.ts'

const loop = {
  value: 258.6,
  standardError: 1.4,
  targetMm: 265,
  changeMm: 6.4,
  movementMm: 3.2,
  changeStandardErrorMm: 1.2,
  firstCutMm: 267.4,
  exactMm: 265,
}

describe('The sentence on a fitted loop', () => {
  it('keeps tube and movement apart', () => {
    expect(loopSentence('Loop 3', loop)).toBe(
      'Loop 3 is 6.4 ± 1.2 mm of tube short: move its slide out 3.2 mm, or cut the new loop to 265.0 mm of tube, first cut 267.4 mm.',
    )
  })

  it('turns round for a loop that is long', () => {
    expect(loopSentence('Loop 3', { ...loop, changeMm: -6.4, movementMm: -3.2 })).toContain(
      'is 6.4 ± 1.2 mm of tube long: move its slide in 3.2 mm',
    )
  })

  it('tells the exact length too where another is wanted', () => {
    expect(loopSentence('Loop 5', { ...loop, exactMm: 243.04 })).toMatch(
      /, first cut 267\.4 mm\. Exact for its own fingering it would be 243\.0 mm\.$/,
    )
    expect(loopSentence('Loop 3', { ...loop, exactMm: 265.04 })).not.toContain('Exact')
  })

  // 12 mm of tube are 6 of movement; 2 in leave 8 mm of tube
  it('asks a slide for no more than it has, and tells what is left over', () => {
    const long = { ...loop, changeMm: -12, movementMm: -6 }
    const sentence = (outMm: number, travelMm: number, of: FittedLoop = long) =>
      /tube (?:long|short): (.+), or cut/.exec(loopSentence('Loop 3', of, { outMm, travelMm }))?.[1]
    expect(sentence(2, 30)).toBe(
      'move its slide in the 2.0 mm that it has and take off the 8.0 mm of tube left over, at first 5.6 mm',
    )
    expect(sentence(0, 30)).toBe(
      'its slide is all the way in already; take off the 12.0 mm of tube left over, at first 9.6 mm',
    )
    expect(sentence(5, 30)).toBe(
      'move its slide in the 5.0 mm that it has and take off the 2.0 mm of tube left over, which is too little to be sure of',
    )
    expect(sentence(6, 30)).toBe('move its slide in 6.0 mm')
    const short = { ...loop, changeMm: 12, movementMm: 6 }
    expect(sentence(27, 30, short)).toBe(
      'move its slide out the 3.0 mm that it has and add the 6.0 mm of tube left over',
    )
    expect(sentence(2, 30, short)).toBe('move its slide out 6.0 mm')
  })

  it('without a target says how long the loop is', () => {
    const bare = {
      ...loop,
      targetMm: null,
      changeMm: null,
      movementMm: null,
      changeStandardErrorMm: null,
      firstCutMm: null,
      exactMm: null,
    }
    expect(loopSentence('Loop 3', bare)).toBe('Loop 3 is 258.6 ± 1.4 mm of tube.')
  })
})
