import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fewNames } from '#shared/quantity/fewNames.ts'
import { briefFigure, lengthText, plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { readLength } from '#shared/quantity/length.ts'

const anyNumber = fc.double()

describe('cents for people', () => {
  test('have a plus when sharp and a true minus when flat', () => {
    expect(signedCents(7.86)).toBe('+7.9')
    expect(signedCents(-1.74)).toBe('−1.7')
    expect(signedCents(37.94, 0)).toBe('+38')
  })

  test.each([0, -0, 0.04, -0.04])('have no sign when %d rounds to zero', (cents) => {
    expect(signedCents(cents)).toBe('0.0')
  })

  test('have a dash where there is no figure', () => {
    expect(signedCents(Number.NaN)).toBe('—')
    expect(signedCents(Number.POSITIVE_INFINITY)).toBe('—')
  })
})

describe('a plain figure', () => {
  test('has the decimals asked for', () => {
    expect(plainFigure(345.8665, 1)).toBe('345.9')
    expect(plainFigure(-3, 0)).toBe('−3')
  })
})

describe('a length for people', () => {
  test('is in tenths of a millimetre or thousandths of an inch unless told', () => {
    expect(lengthText(486.54, 'mm')).toBe('486.5 mm')
    expect(lengthText(25.4, 'in')).toBe('1.000 in')
    expect(lengthText(22.606, 'in', 2)).toBe('0.89 in')
  })

  test('has a dash without a unit where there is no figure', () => {
    expect(lengthText(Number.NaN, 'mm')).toBe('—')
    expect(lengthText(Number.POSITIVE_INFINITY, 'in')).toBe('—')
  })

  test('can be typed back in, to its last decimal', () => {
    const length = fc.double({ min: -10_000, max: 10_000, noNaN: true })
    const back = (text: string) => {
      const reading = readLength(text)
      return reading.ok ? reading.mm : Number.NaN
    }
    fc.assert(
      fc.property(length, (lengthMm) => {
        expect(Math.abs(back(lengthText(lengthMm, 'mm')) - lengthMm)).toBeLessThan(0.0501)
        expect(Math.abs(back(lengthText(lengthMm, 'in')) - lengthMm)).toBeLessThan(0.0128)
      }),
    )
  })
})

describe('every figure', () => {
  test('is free of NaN, infinity, hyphens and a signed zero', () => {
    fc.assert(
      fc.property(anyNumber, fc.integer({ min: 0, max: 4 }), (value, digits) => {
        const figures = [
          plainFigure(value, digits),
          signedCents(value, digits),
          lengthText(value, 'in', digits),
        ]
        for (const figure of figures) expect(figure).not.toMatch(/NaN|Infinity|-|[+−]0(\.0*)?( in)?$/)
      }),
    )
  })
})

describe('a brief figure', () => {
  test('has decimals only where it is no whole number', () => {
    expect([440, 452.5, -3, 2.25].map((value) => briefFigure(value, 1))).toEqual([
      '440',
      '452.5',
      '−3',
      '2.3',
    ])
  })
})

describe('a few names', () => {
  test('are all there up to six, of more the first five', () => {
    expect(fewNames([...'abcdef'])).toBe('a, b, c, d, e, f')
    expect(fewNames([...'abcdefg'])).toBe('a, b, c, d, e and 2 more')
    expect(fewNames([])).toBe('')
  })
})
