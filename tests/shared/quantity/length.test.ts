import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type LengthOptions, readLength } from '#shared/quantity/length.ts'

function mm(text: string, options?: LengthOptions): number {
  const reading = readLength(text, options)
  if (!reading.ok) throw new Error(reading.message)
  return reading.mm
}

function code(text: string, options?: LengthOptions): string {
  const reading = readLength(text, options)
  return reading.ok ? `${reading.mm} mm` : reading.code
}

describe('a typed length', () => {
  test.each([
    ['62.5', 62.5],
    ['62.5 mm', 62.5],
    ['12,5 mm', 12.5],
    ['0,125', 0.125],
    ['1234,125 mm', 1234.125],
    ['.5 m', 500],
    ['12. mm', 12],
    ['3.5cm', 35],
    ['40 µm', 0.04],
    ['1e2 mm', 100],
    ['0.89 in', 22.606],
    ['35 thou', 0.889],
    ['35 mil', 0.889],
    ['10 mils', 0.254],
    ['13 ft', 3962.4],
    ['196 inches', 4978.4],
    ['1 m 20 cm', 1200],
  ])('%s is %f mm', (text, expected) => {
    expect(mm(text)).toBeCloseTo(expected, 9)
  })

  test.each([
    ['1 3/16', 1.1875],
    ['1 3/16 in', 30.1625],
    ['9 1/2 in', 241.3],
    ['9½"', 241.3],
    ['½ in', 12.7],
    ['1/2 in', 12.7],
    ['156/8 in', 495.3],
    ['5/8-1/4', 0.375],
    ['9 - 1/2', 8.5],
    ['2*9 1/2 in', 482.6],
    ['100 / (1 1/4)', 80],
  ])('%s has its fraction: %f mm', (text, expected) => {
    expect(mm(text)).toBeCloseTo(expected, 9)
  })

  test.each(['2 ft 9 in', `2' 9"`, '2′9″', `2'9''`, '2 feet 9 inches', '2ft9in', '(2 ft 9 in)', '33"'])(
    '%s is two feet nine',
    (text) => {
      expect(mm(text)).toBeCloseTo(838.2, 9)
    },
  )

  test('in inches is free of the noise of binary arithmetic', () => {
    expect(mm('12"')).toBe(304.8)
    expect(mm('12', { defaultUnit: 'in' })).toBe(304.8)
    expect(mm('35 thou')).toBe(0.889)
    expect(mm('62.1 mm')).toBe(62.1)
  })

  test('has a fraction after feet', () => {
    expect(mm(`2' 9 1/2"`)).toBeCloseTo(850.9, 9)
  })

  test.each([
    ['2*62.5 + pi*19', 125 + Math.PI * 19],
    ['2×62,5 + π·19', 125 + Math.PI * 19],
    ['2x62.5', 125],
    ['125 ÷ 2', 62.5],
    ['12.*3', 36],
    ['100 − 37.5', 62.5],
    ['2 pi', 2 * Math.PI],
    ['2π', 2 * Math.PI],
    ['2(3+4) mm', 14],
    ['(62+64)/2 mm', 63],
    ['pi*19/2 mm', (Math.PI * 19) / 2],
    ['2*62.5 mm + pi*19', 125 + Math.PI * 19],
    ['1 in + 5 mm', 30.4],
    ['sqrt(3 mm * 12 mm)', 6],
    ['sqrt(3^2 + 4^2)', 5],
    ['abs(-3 mm)', 3],
    ['100 mm * (1 + 5/100)', 105],
    ['24.00/196 * 5000 mm', (24 / 196) * 5000],
    ['-2^2', -4],
  ])('%s is worked out: %f mm', (text, expected) => {
    expect(mm(text)).toBeCloseTo(expected, 9)
  })

  test('takes bare numbers in the default unit of the field', () => {
    expect(mm('1 3/16', { defaultUnit: 'in' })).toBeCloseTo(30.1625, 9)
    expect(mm('2 + 3 in', { defaultUnit: 'in' })).toBeCloseTo(127, 9)
    expect(mm('5 mm', { defaultUnit: 'in' })).toBe(5)
  })

  test('may be negative unless the field says otherwise', () => {
    expect(mm('-1.5 mm')).toBe(-1.5)
    expect(code('-1.5 mm', { atLeast: 0 })).toBe('range')
    expect(code('2 m', { atMost: 1000 })).toBe('range')
    expect(mm('1 m', { atLeast: 0, atMost: 1000 })).toBe(1000)
  })

  test('is never a negative zero', () => {
    expect(Object.is(mm('-0'), 0)).toBe(true)
    expect(Object.is(mm('0 * -3 mm'), 0)).toBe(true)
  })
})

describe('a length that is refused', () => {
  test.each(['', '   ', '\u00a0'])('says that nothing is typed in %j', (text) => {
    expect(code(text)).toBe('empty')
  })

  test.each([
    '1,000',
    '1,000 mm',
    '12,125 mm',
    '1,000,000',
    '1,234.5',
    '1.234,5',
    '1 000',
    '2 ft 3',
    `2' 9`,
    `2'-9"`,
    `2' - 9"`,
    '9-1/2',
    '9-1/2 in',
    '5 + 2 in',
    '5 + 2 cm',
    '1.2.3',
    '100/2 pi',
    '10/(3+4) mm',
    '9 mm^2 / 3 mm',
    '(9) in^2 / (3 in)',
    '10/sqrt(4) pi',
    '100 / 1 1/4',
    '½½',
    '1½½',
    '9 in 2 ft 3 in',
    '9 in 2 ft',
  ])('%s can mean two things', (text) => {
    expect(code(text)).toBe('ambiguous')
  })

  test.each(['1 Mm', '12 MM', '3 km', '2 yd', '5 kg', '90 deg', '2 e', '5 %', '3 €', '1 = 1', '0x10f'])(
    '%s has something that is not used here',
    (text) => {
      expect(code(text)).toBe('unknown')
    },
  )

  test.each([
    'import("fs")',
    'f(x) = x',
    'a = 1; a',
    'constructor',
    '__proto__',
    'cos.constructor("return 1")()',
    '[1]',
    '{a: 1}',
    '"a"',
    "'a'",
    'evaluate("1")',
    'createUnit("x")',
    '1 to in',
    'true ? 1 : 2',
    '1 == 1',
    '5!',
    '1:3',
    'pi.toString',
    'sqrt',
    'sqrt 4',
    '4 sqrt',
    'sqrt(1)(2)(3) pi(',
    '12 in in',
    '12 mm in',
    'mm',
    '2 * mm',
    '2 +',
    '(2',
    '2)',
    '()',
    '* 2',
    '5,',
    '2**3',
  ])('%s is not a calculation', (text) => {
    expect(['syntax', 'unknown']).toContain(code(text))
  })

  test.each(['2 mm * 3 mm', '1 / (2 mm)', '6 mm / (2 mm)', 'sqrt(2 mm)', '2^(3 mm)', '5 + (2 mm)^2'])(
    '%s does not make a length',
    (text) => {
      expect(code(text)).toBe('dimension')
    },
  )

  test.each(['1/0', '0/0', 'sqrt(-1)', '1e999 mm', '10^400 mm', '1 3/0 in', '(-8)^(1/3)'])(
    '%s is no finite number',
    (text) => {
      expect(code(text)).toBe('range')
    },
  )

  test('says what was found, what was expected, and both in a sentence', () => {
    expect(readLength('12 km')).toEqual({
      ok: false,
      code: 'unknown',
      found: 'km',
      expected: 'mm, cm, m, µm, in, ft or thou, in small letters',
      message: '“km” is not used here. Use mm, cm, m, µm, in, ft or thou, in small letters.',
    })
    expect(readLength('about right')).toMatchObject({
      code: 'syntax',
      message:
        '“about right” is not complete or not clear. Type a length such as 12.5 mm, 1 3/16 in or 2*62.5 + pi*19.',
    })
    expect(readLength('1,000')).toMatchObject({ code: 'ambiguous', found: '1,000' })
    expect(readLength(`2'-9"`)).toMatchObject({ expected: `2' 9", or (2') - (9")` })
  })

  test('may be long: more than 200 characters, or brackets without end', () => {
    expect(code(`${'1+'.repeat(200)}1`)).toBe('syntax')
    expect(code('('.repeat(200))).toBe('syntax')
    expect(code(`${'('.repeat(90)}1${')'.repeat(90)}`)).toBe('1 mm')
  })
})

describe('whatever is typed', () => {
  const pieces = [
    '1',
    '0',
    '12.5',
    ',',
    '.',
    ' ',
    'mm',
    'in',
    'ft',
    "'",
    '"',
    '/',
    '*',
    '-',
    '+',
    '^',
    '(',
    ')',
  ]
  const oddities = [
    'pi',
    'sqrt',
    'sqrt 4',
    '4 sqrt',
    'abs(',
    '½',
    'e',
    'e9',
    '×',
    'x',
    '1/2',
    '1,000',
    'Mm',
    '=',
    '[',
    ';',
    '\u0000',
    '\ud800',
  ]
  const lengthLike = fc.array(fc.constantFrom(...pieces, ...oddities), { maxLength: 14 })
  const text = fc.oneof(
    lengthLike.map((parts) => parts.join('')),
    fc.string({ maxLength: 250 }),
    fc.string({ unit: fc.integer({ min: 0, max: 0xffff }).map((unit) => String.fromCharCode(unit)) }),
  )
  const defaultUnit = fc.constantFrom('mm' as const, 'in' as const)

  test('the answer is a finite number or a refusal with its reasons, and nothing is thrown', () => {
    fc.assert(
      fc.property(text, defaultUnit, (typed, unit) => {
        const reading = readLength(typed, { defaultUnit: unit })
        if (reading.ok) expect(reading.mm).toSatisfy(Number.isFinite)
        else expect(reading.message && reading.expected).not.toBe('')
      }),
      { numRuns: 3000 },
    )
  })

  test('a whole number of millimetres reads the same in every unit that holds it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000 }), (length) => {
        expect(mm(`${length}`)).toBe(length)
        expect(mm(`${length / 10} cm`)).toBeCloseTo(length, 6)
        expect(mm(`${length / 25.4} in`)).toBeCloseTo(length, 6)
        expect(mm(`${length / 10}`.replace('.', ','))).toBeCloseTo(length / 10, 9)
      }),
    )
  })

  test('feet, inches and a fraction add up', () => {
    const [feet, inches, parts] = [fc.nat(20), fc.nat(11), fc.integer({ min: 1, max: 63 })]
    fc.assert(
      fc.property(feet, inches, parts, (ft, inch, sixtyFourths) => {
        const expected = 25.4 * (12 * ft + inch + sixtyFourths / 64)
        expect(mm(`${ft} ft ${inch} ${sixtyFourths}/64 in`)).toBeCloseTo(expected, 9)
      }),
    )
  })
})
