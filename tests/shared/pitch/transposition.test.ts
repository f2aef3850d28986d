import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { soundingMidi, writtenMidi } from '#shared/pitch/transposition.ts'

describe('a written note', () => {
  test('lies above the sounding one on an instrument in B♭', () => {
    expect(writtenMidi(58, -2)).toBe(60)
  })

  test('lies below the sounding one on an instrument in high E♭', () => {
    expect(writtenMidi(63, 3)).toBe(60)
  })

  test('sounds as the note it was written for', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 127 }), fc.integer({ min: -24, max: 24 }), (midi, semitones) => {
        expect(soundingMidi(writtenMidi(midi, semitones), semitones)).toBe(midi)
      }),
    )
  })
})
