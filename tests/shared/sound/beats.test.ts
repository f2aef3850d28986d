import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { beatHz, meetingOf, partialBeats } from '#shared/sound/beats.ts'

const hz = fc.double({ min: 20, max: 2000, noNaN: true })

describe('beats of a note against its target', () => {
  it('are none when the two are the same', () => {
    expect(partialBeats(174.6, 174.6).every((beat) => beat.beatHz === 0)).toBe(true)
  })

  it('come as often as the frequencies differ, whichever is the higher', () => {
    expect(beatHz(442, 440)).toBe(2)
    expect(beatHz(440, 442)).toBe(2)
  })

  it('come n times as fast at partial n', () => {
    fc.assert(
      fc.property(hz, hz, (note, target) => {
        for (const beat of partialBeats(note, target)) {
          expect(beat.beatHz).toBeCloseTo(beat.partial * Math.abs(note - target), 9)
        }
      }),
    )
  })

  // 5000 / 490 is 10.2, 5000 / 440 is 11.4.
  it('end where either tone has no further partial', () => {
    expect(partialBeats(490, 440)).toHaveLength(10)
    expect(partialBeats(440, 490)).toHaveLength(10)
  })

  it('of 15 cents at F2 are 0.7597 a second: 87.307·(2^(15/1200) − 1)', () => {
    const f2Hz = 440 * 2 ** (-28 / 12)
    expect(beatHz(f2Hz * 2 ** (15 / 1200), f2Hz)).toBeCloseTo(0.7597, 4)
  })
})

describe('where the partials of two notes meet', () => {
  it.each([
    ['unison', 1, [1, 1]],
    ['octave', 2, [2, 1]],
    ['fifth', 3 / 2, [3, 2]],
    ['fourth', 4 / 3, [4, 3]],
    ['major third', 5 / 4, [5, 4]],
    ['minor third', 6 / 5, [6, 5]],
    ['major sixth', 5 / 3, [5, 3]],
    ['twelfth', 3, [3, 1]],
  ])('is without a beat in a pure %s', (_, ratio, partials) => {
    const meeting = meetingOf(100, 100 * ratio)
    expect([meeting?.lowPartial, meeting?.highPartial]).toEqual(partials)
    expect(meeting?.beatHz).toBeCloseTo(0, 9)
  })

  it('of a tempered fifth on A3 is its third and second partial, beating 0.7449 times a second', () => {
    expect(meetingOf(220, 220 * 2 ** (7 / 12))).toMatchObject({ lowPartial: 3, highPartial: 2 })
    expect(meetingOf(220, 220 * 2 ** (7 / 12))?.beatHz).toBeCloseTo(0.7449, 4)
  })

  it('is nowhere for a semitone, a whole tone and a tritone', () => {
    for (const semitones of [1, 2, 6]) expect(meetingOf(200, 200 * 2 ** (semitones / 12))).toBeNull()
  })
})
