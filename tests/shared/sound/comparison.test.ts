import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type ComparisonWay, comparison } from '#shared/sound/comparison.ts'
import { fadeCurve, fadeInS, fadeOutS, mostShare, partsAt } from '#shared/sound/piece.ts'

const hz = fc.double({ min: 15, max: 3000, noNaN: true })
const way = fc.constantFrom<ComparisonWay>('note', 'target', 'alternately', 'together')

describe('a comparison', () => {
  it('refuses what is no frequency', () => {
    expect(() => comparison('together', Number.NaN, 220)).toThrow(RangeError)
    expect(() => comparison('note', 220, 0)).toThrow(RangeError)
  })

  it('never has more than the whole level at once, and ends with its last tone', () => {
    fc.assert(
      fc.property(way, hz, hz, (each, noteHz, targetHz) => {
        const piece = comparison(each, noteHz, targetHz)
        expect(mostShare(piece)).toBeLessThanOrEqual(1)
        const ends = piece.tones.map(({ startS, durationS }) => startS + durationS)
        expect(Math.max(...ends)).toBeCloseTo(piece.lengthS, 9)
      }),
    )
  })

  it('has its level counted where tones sound at once, not one after the other', () => {
    const tone = (startS: number, share: number) => ({ startS, durationS: 2, hz: 220, share, part: 0 })
    expect(mostShare({ tones: [tone(0, 0.5), tone(1, 0.25)], lengthS: 3 })).toBe(0.75)
    expect(mostShare({ tones: [tone(0, 0.5), tone(2, 0.25)], lengthS: 4 })).toBe(0.5)
  })

  it('has tones with room for their fades', () => {
    fc.assert(
      fc.property(way, hz, hz, (each, noteHz, targetHz) => {
        for (const { durationS } of comparison(each, noteHz, targetHz).tones)
          expect(durationS).toBeGreaterThan(fadeInS + fadeOutS)
      }),
    )
  })

  it('alternately takes the note first, then its target, never both', () => {
    const piece = comparison('alternately', 222, 220)
    expect(piece.tones.map((tone) => tone.hz)).toEqual([222, 220, 222, 220, 222, 220])
    for (let atS = 0; atS < piece.lengthS; atS += 0.01)
      expect(partsAt(piece, atS).length).toBeLessThanOrEqual(1)
  })

  it('together lasts for three beats, within 4 and 12 seconds', () => {
    expect(comparison('together', 220.5, 220).lengthS).toBe(6)
    expect(comparison('together', 230, 220).lengthS).toBe(4)
    expect(comparison('together', 220, 220).lengthS).toBe(12)
    expect(partsAt(comparison('together', 220.5, 220), 3)).toEqual([0, 1])
  })
})

describe('a fade', () => {
  it('runs from nothing to all, without a step at either end', () => {
    const curve = fadeCurve(65)
    expect([curve[0], curve[32], curve[64]]).toEqual([0, expect.closeTo(0.5, 12), 1])
    const steps = curve.slice(1).map((value, i) => value - curve[i]!)
    expect(Math.min(...steps)).toBeGreaterThan(0)
    expect(Math.max(steps[0]!, steps[63]!)).toBeLessThan(0.001)
  })
})
