import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lengthSlips, loopErrorCents } from '#shared/bench/slips/lengthSlips.ts'
import { loopSlips, type TypedLoop } from '#shared/bench/slips/loopSlips.ts'
import { a4Slip, allEqualSlip, readingSlip } from '#shared/bench/slips/pitchSlips.ts'
import { slideSlips } from '#shared/bench/slips/slideSlips.ts'
import { loopForDropMm, requiredLengthMm } from '#shared/tubing/requiredLength.ts'
import { thirdSlide } from '../slide/thirdSlide.ts'

const openMm = 1400
const drops = { '1': 2, '2': 1, '3': 3 } as const
/** Nominal loops 171.4, 83.2 and 264.9 mm, with one typed otherwise. */
const typed = (change: Partial<Record<keyof typeof drops, number>> = {}): TypedLoop[] =>
  Object.entries(drops).map(([valve, semitones]) => ({
    field: `loops.L${valve}`,
    valve,
    semitones,
    lengthMm: change[valve as keyof typeof drops] ?? loopForDropMm(openMm, semitones),
  }))
const messages = (loops: TypedLoop[]) => loopSlips(openMm, loops).map(({ message }) => message)

describe('Typed loops', () => {
  it('that fit, or are within 60 cents, are left alone', () => {
    expect(loopSlips(openMm, [])).toEqual([])
    expect(messages(typed())).toEqual([])
    expect(messages(typed({ 3: loopForDropMm(openMm, 3.5) }))).toEqual([])
  })

  // half of 264.9: 1200·log2(1 + 132.4/1400) = 156.49 cents, about half of 300
  it('measured per leg come out at about half their drop and offer the whole', () => {
    const halfMm = loopForDropMm(openMm, 3) / 2
    expect(300 - loopErrorCents(openMm, halfMm, 3)).toBeCloseTo(156.49, 2)
    expect(messages(typed({ 3: halfMm }))[0]).toBe(
      'Found 132.4 mm, expected about 264.9 mm. Is it the length of one leg? Then the whole is 264.9 mm.',
    )
  })

  // half of 83.2: 1200·log2(1 + 41.6/1400) = 50.7 cents, 49.3 sharp of 100
  it.each([
    [2, 'Is it the length of one leg? Then the whole is 83.2 mm.'],
    [2.54, 'Is it inches, typed as centimetres? Then it is 83.2 mm.'],
  ])('of a semitone are named when a slip of %d explains less than 60 cents', (factor, end) => {
    const found = messages(typed({ 2: loopForDropMm(openMm, 1) / factor }))
    expect(found).toHaveLength(1)
    expect(found[0]!.endsWith(end)).toBe(true)
  })

  it('of a second whole tone may be long, as for the company of another valve, and not much longer', () => {
    const fourth = { field: 'loops.L4', valve: '4', semitones: 5, lengthMm: loopForDropMm(openMm, 5) }
    const inCompanyMm = loopForDropMm(requiredLengthMm(openMm, 5), 2)
    const withLong = (lengthMm: number) => [
      ...typed(),
      fourth,
      { field: 'loops.L5', valve: '5', semitones: 2, lengthMm },
    ]
    // Alone it drops 262.1 cents.
    expect(loopErrorCents(openMm, inCompanyMm, 2)).toBeCloseTo(-62.1, 1)
    expect(messages(withLong(inCompanyMm))).toEqual([])
    expect(messages(withLong(2 * inCompanyMm)).length).toBeGreaterThan(0)
    expect(messages(withLong(inCompanyMm / 2)).length).toBeGreaterThan(0)
  })

  it('typed for another valve offer that valve, and are seen to run against their drops', () => {
    const found = messages(typed({ 2: loopForDropMm(openMm, 3) }))
    expect(found[0]).toBe('Found 264.9 mm for valve 2, expected about 83.2 mm. Is it the loop of valve 3?')
    expect(found.at(-1)).toBe(
      'Loop of valve 2 (264.9 mm) is longer than that of valve 1 (171.4 mm), though it drops less. Are the two exchanged?',
    )
  })

  it('of a first valve halved may be a leg or the second’s: both are offered', () => {
    const found = messages(typed({ 1: loopForDropMm(openMm, 2) / 2 }))
    expect(found.some((message) => message.includes('loop of valve 2'))).toBe(true)
    expect(found.some((message) => message.includes('one leg'))).toBe(true)
  })

  it('that fit nothing are told by how much they miss', () => {
    // 1200·log2(1 + 200/1400) = 231.2 cents, 68.8 sharp of 300
    expect(messages(typed({ 3: 200 }))).toEqual([
      'Loop of valve 3 is 200.0 mm; it drops 231.2 cents where 300 are nominal (+68.8 cents). Expected about 264.9 mm.',
    ])
  })

  it('of any length are never changed and never lack a field', () => {
    const length = fc.double({ min: 0.001, max: 1e6, noNaN: true })
    fc.assert(
      fc.property(length, length, length, (first, second, third) => {
        const loops = typed({ 1: first, 2: second, 3: third })
        const before = structuredClone(loops)
        const found = loopSlips(openMm, loops)
        expect(loops).toEqual(before)
        expect(found.every(({ field, message }) => field !== '' && !message.includes('NaN'))).toBe(true)
      }),
    )
  })
})

describe('A length in the wrong unit', () => {
  it.each([
    ['inches typed as millimetres', 265 / 25.4, 'Is it inches? Then it is 265.0 mm.'],
    ['inches typed as centimetres', 265 / 2.54, 'Is it inches, typed as centimetres? Then it is 265.0 mm.'],
    [
      'centimetres typed as millimetres',
      26.5,
      'Is it centimetres, or is the decimal point one place off? Then it is 265.0 mm.',
    ],
    ['a lost decimal comma', 2650, 'Is the decimal point or comma one place off? Then it is 265.0 mm.'],
    ['metres', 0.265, 'Is it metres? Then it is 265.0 mm.'],
    ['feet', 265 / 304.8, 'Is it feet? Then it is 265.0 mm.'],
  ])('is offered as what it may be: %s', (_, foundMm, end) => {
    expect(lengthSlips('x', foundMm, 265).map(({ message }) => message.endsWith(end))).toContain(true)
  })

  it('that resembles nothing offers nothing', () => expect(lengthSlips('x', 200, 265)).toEqual([]))
})

describe('A typed A4', () => {
  it('from 380 to 480 Hz is left alone', () => {
    expect([380, 415, 452.5, 480].map((hz) => a4Slip('a4Hz', hz))).toEqual([null, null, null, null])
  })

  it.each([
    [44, 'found 44 Hz, expected 380 to 480 Hz. Is a figure missing? Was 440 Hz meant?'],
    [4400, 'found 4400 Hz, expected 380 to 480 Hz. Is the decimal point or comma missing? Was 440 Hz meant?'],
    [
      4525,
      'found 4525 Hz, expected 380 to 480 Hz. Is the decimal point or comma missing? Was 452.5 Hz meant?',
    ],
    [220, 'found 220 Hz, expected 380 to 480 Hz. Is it A3? Then A4 is 440 Hz.'],
    [880, 'found 880 Hz, expected 380 to 480 Hz. Is it A5? Then A4 is 440 Hz.'],
    [500, 'found 500 Hz, expected 380 to 480 Hz.'],
  ])('of %d Hz offers what is likely', (hz, message) => {
    expect(a4Slip('a4Hz', hz)).toMatchObject({ field: 'a4Hz', found: String(hz), message })
  })

  it('that is no number is found out', () => expect(a4Slip('a4Hz', Number.NaN)?.found).toBe('NaN'))
})

describe('A typed reading', () => {
  it('of up to 70 cents is left alone', () => expect(readingSlip('rows[0]', -70, 174.6)).toBeNull())

  it('may be hertz, another note, or short of a comma', () => {
    expect(readingSlip('rows[0]', 175.1, 174.6)?.message).toContain('Is it the frequency in hertz?')
    expect(readingSlip('rows[0]', -95, 174.6)?.message).toContain('neighbouring note')
    expect(readingSlip('rows[0]', 265, 174.6)?.message).toContain('+26.5 cents would be likely')
  })

  it('that equals all the others may be one figure copied down', () => {
    expect(allEqualSlip('rows', [-25, -25, -25])?.found).toBe('3 times −25.0 cents')
    expect([[], [5], [5, 6]].map((cents) => allEqualSlip('rows', cents))).toEqual([null, null, null])
  })
})

describe('A typed slide', () => {
  const fields = (change: object) =>
    slideSlips('s', { ...thirdSlide, ...change }).map(({ field, message }) => [field, message])

  it('that is likely is left alone', () => expect(fields({})).toEqual([]))

  it('that stands out by more than twice its travel is no slip of tube for movement', () => {
    expect(fields({ outAtPitchMm: 70 })).toEqual([])
  })

  it.each([
    [{ boreDiameterMm: 0.677 }, 's.boreDiameterMm', 'Is it inches? Then it is 17.2 mm.'],
    [{ boreDiameterMm: 172 }, 's.boreDiameterMm', 'Is a decimal comma missing? Then it is 17.2 mm.'],
    [{ wallMm: 18.2 }, 's.wallMm', 'Is it the outer diameter?'],
    [{ wallMm: 5 }, 's.wallMm', 'Is a decimal point off?'],
    [{ wallMm: 40 }, 's.wallMm', 'Is a decimal point off?'],
    [{ legSpacingMm: 19 }, 's.legSpacingMm', 'Is it the bow’s radius? Then the spacing is 38.0 mm.'],
    [
      { outAtPitchMm: 40 },
      's.outAtPitchMm',
      'Is it tube where movement was asked for? Then it is 20.0 mm out.',
    ],
  ])('%o offers the likely meaning', (change, field, question) => {
    expect(fields(change)).toEqual([[field, expect.stringContaining(question)]])
  })
})
