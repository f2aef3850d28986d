import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Temperament, temperamentDeviations } from '#shared/pitch/temperament.ts'

const [c, d, eFlat, e, f, gSharp, a, bFlat] = [0, 2, 3, 4, 5, 8, 9, 10]
const syntonicCommaCents = 1200 * Math.log2(81 / 80)
const pythagoreanCommaCents = 1200 * Math.log2(3 ** 12 / 2 ** 19)

/** The interval from one pitch class up to another, cents. */
function intervalCents(temperament: Temperament, from: number, to: number): number {
  const deviations = temperamentDeviations(temperament)
  const semitones = (to - from + 12) % 12
  return 100 * semitones + deviations[to]! - deviations[from]!
}

const ratioCents = (ratio: number) => 1200 * Math.log2(ratio)

describe('temperament', () => {
  test('deviates nowhere when it is equal', () => {
    expect(temperamentDeviations({ kind: 'equal' })).toEqual([0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0])
  })

  test('leaves A where it is in every scale on a key note', () => {
    const kind = fc.constantFrom('just' as const, 'pythagorean' as const, 'meantone' as const)
    const key = fc.constantFrom('C', 'Db', 'D', 'E♭', 'E', 'F', 'F#', 'G', 'Ab', 'A', 'Bb', 'B')
    fc.assert(
      fc.property(kind, key, (kind, key) => {
        const deviations = temperamentDeviations({ kind, key })
        expect(deviations).toHaveLength(12)
        expect(deviations[a]).toBe(0)
      }),
    )
  })

  test('has pure thirds and fifths above the key note when it is just', () => {
    expect(intervalCents({ kind: 'just', key: 'F' }, f!, a!)).toBeCloseTo(ratioCents(5 / 4), 9)
    expect(intervalCents({ kind: 'just', key: 'F' }, f!, c!)).toBeCloseTo(ratioCents(3 / 2), 9)
    expect(intervalCents({ kind: 'just', key: 'Eb' }, eFlat!, bFlat!)).toBeCloseTo(ratioCents(3 / 2), 9)
  })

  // 1200·log2 of 16/15, 9/8, 6/5, 5/4, 4/3, 45/32, 3/2, 8/5, 5/3, 9/5, 15/8 above the key note.
  const justDegrees = [
    0, 111.7313, 203.91, 315.6413, 386.3137, 498.045, 590.2237, 701.955, 813.6863, 884.3587, 1017.5963,
    1088.2687,
  ]

  test.each([
    ['C', c],
    ['Eb', eFlat],
    ['A', a],
  ])('has every degree at its just interval above %s', (key, keyNote) => {
    for (const [degree, cents] of justDegrees.entries()) {
      const note = (keyNote! + degree) % 12
      expect(intervalCents({ kind: 'just', key }, keyNote!, note), `degree ${degree}`).toBeCloseTo(cents, 3)
    }
  })

  test('puts F sharp by 13.7 cents when it is just on F, for A has to stay', () => {
    expect(temperamentDeviations({ kind: 'just', key: 'F' })[f!]).toBeCloseTo(13.686, 3)
  })

  test('has pure fifths and major thirds a comma wide when it is Pythagorean', () => {
    const onC: Temperament = { kind: 'pythagorean', key: 'C' }
    expect(intervalCents(onC, d!, a!)).toBeCloseTo(ratioCents(3 / 2), 9)
    expect(intervalCents(onC, c!, e!)).toBeCloseTo(ratioCents(5 / 4) + syntonicCommaCents, 9)
  })

  test('has pure major thirds and fifths a quarter comma narrow when it is mean-tone', () => {
    const onC: Temperament = { kind: 'meantone', key: 'C' }
    expect(intervalCents(onC, c!, e!)).toBeCloseTo(ratioCents(5 / 4), 9)
    expect(intervalCents(onC, d!, a!)).toBeCloseTo(ratioCents(3 / 2) - syntonicCommaCents / 4, 9)
  })

  test('closes the circle between the eighth fifth above the key and the third below', () => {
    expect(intervalCents({ kind: 'pythagorean', key: 'C' }, gSharp!, eFlat!)).toBeCloseTo(
      ratioCents(3 / 2) - pythagoreanCommaCents,
      9,
    )
    expect(intervalCents({ kind: 'meantone', key: 'C' }, gSharp!, eFlat!)).toBeGreaterThan(735)
  })

  test('is the same on two spellings of one key', () => {
    expect(temperamentDeviations({ kind: 'meantone', key: 'C#' })).toEqual(
      temperamentDeviations({ kind: 'meantone', key: 'D♭' }),
    )
  })

  test('uses typed cents as typed, that of A too', () => {
    const cents = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]
    expect(temperamentDeviations({ kind: 'custom', cents })).toEqual(cents)
  })

  test('throws for a key that is no note and for cents that are not twelve numbers', () => {
    expect(() => temperamentDeviations({ kind: 'just', key: 'H' })).toThrow(RangeError)
    expect(() => temperamentDeviations({ kind: 'custom', cents: [0] })).toThrow(RangeError)
    expect(() => temperamentDeviations({ kind: 'custom', cents: Array(12).fill(Number.NaN) })).toThrow(
      RangeError,
    )
  })
})
