import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  centsFrom440,
  defaultReference,
  hzOfMidiCents,
  midiCentsOfHz,
  nearestMidi,
  targetHz,
  targetMidiCents,
} from '#shared/pitch/reference.ts'
import type { Temperament } from '#shared/pitch/temperament.ts'

describe('the target of a note', () => {
  test('is A4 itself in every temperament on a key note', () => {
    expect(targetHz(69, { a4Hz: 442, temperament: { kind: 'equal' } })).toBe(442)
    expect(targetHz(69, { a4Hz: 415, temperament: { kind: 'just', key: 'F' } })).toBe(415)
  })

  test('is 261.6256 Hz for middle C of the equal scale at 440', () => {
    expect(targetHz(60, defaultReference)).toBeCloseTo(261.6256, 4)
  })

  test('is 43.654 Hz for the F1 of a bass', () => {
    expect(targetHz(29, defaultReference)).toBeCloseTo(43.654, 3)
  })

  test('is a pure fifth above A for the E of a just scale on C', () => {
    expect(targetHz(76, { a4Hz: 440, temperament: { kind: 'just', key: 'C' } })).toBeCloseTo(660, 9)
  })

  test('deviates alike in every octave', () => {
    const temperament: Temperament = { kind: 'meantone', key: 'Bb' }
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 115 }), (midi) => {
        const octave = targetMidiCents(midi + 12, temperament) - targetMidiCents(midi, temperament)
        expect(octave).toBeCloseTo(1200, 9)
      }),
    )
  })

  test('follows typed cents, A4 too', () => {
    const cents = [0, 0, 0, 0, 0, 0, 0, 0, 0, 5, 0, 0]
    expect(targetMidiCents(69, { kind: 'custom', cents })).toBe(6905)
  })

  test('throws for a number between two notes', () => {
    expect(() => targetHz(60.5, defaultReference)).toThrow(RangeError)
  })
})

describe('the place of a frequency', () => {
  test('undoes the frequency of a place', () => {
    const midiCents = fc.double({ min: 0, max: 12700, noNaN: true })
    const a4Hz = fc.double({ min: 380, max: 480, noNaN: true })
    fc.assert(
      fc.property(midiCents, a4Hz, (place, a4) => {
        expect(midiCentsOfHz(hzOfMidiCents(place, a4), a4)).toBeCloseTo(place, 6)
      }),
    )
  })

  test('is nearest to one note', () => {
    expect(nearestMidi(43.654, 440)).toBe(29)
    expect(nearestMidi(440, 452.5)).toBe(69)
    expect(nearestMidi(440, 480)).toBe(67)
  })
})

describe('a pitch standard', () => {
  test.each([
    [440, 0],
    [415, -101.3],
    [430, -39.8],
    [435, -19.8],
    [442, 7.9],
    [443, 11.8],
    [452.5, 48.5],
  ])('of %f Hz lies %f cents from 440', (a4Hz, cents) => {
    expect(centsFrom440(a4Hz)).toBeCloseTo(cents, 1)
  })
})
