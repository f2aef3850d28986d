import { describe, expect, it } from 'vitest'
import { fromOnePiece } from '#shared/bench/fromOnePiece.ts'
import { loopForDropMm } from '#shared/tubing/requiredLength.ts'
import published from '../../fixtures/bench.published.json'

const valves = [
  { id: '1', semitones: 2 },
  { id: '2', semitones: 1 },
  { id: '3', semitones: 3 },
  { id: '4', semitones: 5 },
]

describe('An instrument from one piece', () => {
  it('throws for a valve that drops by nothing, and for a loop of no length', () => {
    expect(() => fromOnePiece({ kind: 'loop', lengthMm: 80, semitones: 0 }, valves, 345)).toThrow(RangeError)
    expect(() => fromOnePiece({ kind: 'loop', lengthMm: 0, semitones: 2 }, valves, 345)).toThrow(RangeError)
  })

  it.each([
    [1, 16.82],
    [2, 8.17],
    [3, 5.29],
    [5, 2.99],
  ])('of %d semitones is %d times its loop', (semitones, times) => {
    const { openLengthMm } = fromOnePiece({ kind: 'loop', lengthMm: 1, semitones }, valves, 345)
    expect(openLengthMm).toBeCloseTo(times, 2)
  })

  it('gives back the loop that it came from', () => {
    const answer = fromOnePiece({ kind: 'loop', lengthMm: 172, semitones: 2 }, valves, 345)
    expect(answer.loopsMm['1']).toBeCloseTo(172, 9)
  })

  // 345000 / (2 × 43.125) = 4000 mm, and 3850 + 150 = 4000 mm
  it('agrees between fundamental and bore length', () => {
    const bore = fromOnePiece({ kind: 'bore', boreLengthMm: 3850, correctionMm: 150 }, valves, 345)
    expect(fromOnePiece({ kind: 'fundamental', fundamentalHz: 43.125 }, valves, 345).loopsMm).toEqual(
      bore.loopsMm,
    )
    expect(bore.fundamentalHz).toBeCloseTo(43.125, 9)
  })

  it.each([published.contrabass, published.highInstrument])(
    'has the exact loops of: $source',
    (instrument) => {
      for (const [id, loop] of Object.entries(instrument.loops)) {
        const { semitones } = valves.find((valve) => valve.id === id)!
        expect(Math.abs(loopForDropMm(instrument.openLength, semitones) - loop)).toBeLessThan(
          instrument.tolerance,
        )
      }
    },
  )
})
