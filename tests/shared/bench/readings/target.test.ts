import { describe, expect, it } from 'vitest'
import {
  harmonicFromTemperedCents,
  harmonicOfNote,
  meantHz,
  meantMidi,
} from '#shared/bench/readings/target.ts'

const bassInF = { fundamentalHz: 43.6535, a4Hz: 440 }

describe('The note that a fingering is meant to sound', () => {
  // F1 is midi 29; harmonic 4 is two octaves up, 53; three semitones down, 50
  it('is down by the drop and up by the harmonic', () => {
    expect(meantMidi(bassInF, 0, 4)).toBe(53)
    expect(meantMidi(bassInF, 3, 4)).toBe(50)
    expect(meantMidi(bassInF, 0, 5)).toBe(57)
  })

  it('moves with the tuner’s A4, not with the design’s', () => {
    expect(meantHz(bassInF, 0, 5, 452.5)).toBeCloseTo(226.25, 9)
    expect(meantMidi({ fundamentalHz: 43.6535 * (452.5 / 440), a4Hz: 452.5 }, 0, 4)).toBe(53)
  })

  it('names its harmonic, or none when no harmonic is near', () => {
    expect(harmonicOfNote(bassInF, 3, 50)).toBe(4)
    expect(harmonicOfNote(bassInF, 0, 57)).toBe(5)
    expect(harmonicOfNote(bassInF, 0, 47)).toBeNull()
    expect(harmonicOfNote(bassInF, 0, 20)).toBeNull()
  })

  // D5, 45 semitones up, is 4500 − 1200·log2(13) = 59.5 cents from harmonic 13; D4, 33 up, −68.8 from harmonic 7
  it('takes a harmonic within 60 cents', () => {
    expect(harmonicOfNote(bassInF, 0, 74)).toBe(13)
    expect(harmonicOfNote(bassInF, 0, 62)).toBeNull()
  })

  it('is 13.7 cents above the fifth harmonic and 31.2 above the seventh', () => {
    expect(harmonicFromTemperedCents(5)).toBeCloseTo(-13.686, 3)
    expect(harmonicFromTemperedCents(7)).toBeCloseTo(-31.174, 3)
    expect(harmonicFromTemperedCents(4)).toBe(0)
  })
})
