import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type NumberOptions, readNumber } from '#shared/quantity/number.ts'

const hertz: NumberOptions = { units: ['Hz'] }
const cents: NumberOptions = { units: ['cents', 'cent', 'c', '¢'] }
const celsius: NumberOptions = { units: ['°C', 'C'] }

function answer(text: string, options?: NumberOptions): number | string {
  const reading = readNumber(text, options)
  return reading.ok ? reading.value : reading.code
}

describe('a typed number', () => {
  test.each([
    ['442', hertz, 442],
    ['442,5 Hz', hertz, 442.5],
    ['442hz', hertz, 442],
    ['+7.9 cents', cents, 7.9],
    ['−19.8 ¢', cents, -19.8],
    ['24 °C', celsius, 24],
    ['24 °C', { units: ['C', '°C'] }, 24],
    ['(70-32)*5/9 C', celsius, 21.11111],
    ['50 %', { units: ['%'] }, 50],
    ['0,0004', {}, 0.0004],
    ['2 1/2', {}, 2.5],
    ['2 pi', {}, 2 * Math.PI],
  ] as const)('%s is read', (text, options, expected) => {
    expect(answer(text, options)).toBeCloseTo(expected, 5)
  })

  test('is not taken with a unit of another field', () => {
    expect(answer('12 mm', cents)).toBe('unknown')
    expect(answer('440 Hz')).toBe('unknown')
    expect(answer('440 kHz', hertz)).toBe('unknown')
  })

  test('is not taken when two numbers or a thousands comma make it unclear', () => {
    expect(answer('101,325')).toBe('ambiguous')
    expect(answer('440 442', hertz)).toBe('ambiguous')
  })

  test('is not taken when there is no number', () => {
    expect(answer('', hertz)).toBe('empty')
    expect(answer('Hz', hertz)).toBe('empty')
    expect(answer('1/0')).toBe('range')
  })

  test('keeps the bounds of its field and names them', () => {
    const a4 = { ...hertz, atLeast: 380, atMost: 480 }
    expect(answer('440', a4)).toBe(440)
    expect(readNumber('44 Hz', a4)).toEqual({
      ok: false,
      code: 'range',
      found: '44 Hz',
      expected: 'at least 380 Hz',
      message: '“44 Hz” is out of range. Expected at least 380 Hz.',
    })
  })

  test.each([
    ['12', { atLeast: 12.3411111 }, 'at least 12.35'],
    ['13', { atMost: 12.3488888 }, 'at most 12.34'],
    ['12', { atLeast: 12.34111 }, 'at least 12.34111'],
  ])('%s is told a bound that is itself taken, to a hundredth where it is long', (text, bounds, expected) => {
    expect(readNumber(text, bounds)).toMatchObject({ code: 'range', expected })
    expect(readNumber(expected.replace(/^at (least|most) /, ''), bounds).ok).toBe(true)
  })

  test('is finite or refused, whatever is typed', () => {
    const part = fc.constantFrom(...'0123456789.,+-*/^() eHz¢%°C×')
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: part }), fc.string()), (text) => {
        const reading = readNumber(text, { units: ['Hz', '%'] })
        expect(!reading.ok || Number.isFinite(reading.value)).toBe(true)
      }),
      { numRuns: 2000 },
    )
  })
})
