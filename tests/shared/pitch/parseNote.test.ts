import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { noteName, plainNoteName } from '#shared/pitch/noteName.ts'
import { parseNote, pitchClassOfName } from '#shared/pitch/parseNote.ts'

const noteLike = fc.string({ unit: fc.constantFrom(...'AaBbH#♯♭-−0159 .') })

describe('a typed note', () => {
  test.each([
    ['Bb3', 58],
    ['B♭3', 58],
    ['bb3', 58],
    ['b3', 59],
    ['f#4', 66],
    ['F♯4', 66],
    [' C 4 ', 60],
    ['C-1', 0],
    ['C−1', 0],
    ['G9', 127],
  ])('%s is midi %i', (text, midi) => {
    expect(parseNote(text)).toBe(midi)
  })

  test('keeps the octave of its letter', () => {
    expect(parseNote('Cb4')).toBe(59)
    expect(parseNote('B#3')).toBe(60)
  })

  test.each(['', 'C', '4', 'H3', 'Cx4', 'C##4', 'BB3', 'C4.5', 'C 44 4', 'G#9', 'Cb-1', 'C999'])(
    '%j is no note',
    (text) => {
      expect(parseNote(text)).toBeNull()
    },
  )

  test('reads back every name that is written', () => {
    const spelling = fc.constantFrom('sharps' as const, 'flats' as const)
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 127 }), spelling, (midi, spelled) => {
        expect(parseNote(noteName(midi, spelled))).toBe(midi)
        expect(parseNote(plainNoteName(midi, spelled))).toBe(midi)
      }),
    )
  })

  test('is a number of the midi range or null, whatever is typed', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), noteLike), (text) => {
        const midi = parseNote(text)
        expect(midi === null || (Number.isInteger(midi) && midi >= 0 && midi <= 127)).toBe(true)
      }),
    )
  })
})

describe('a key note', () => {
  test.each([
    ['F', 5],
    ['Bb', 10],
    ['E♭', 3],
    ['C#', 1],
    ['Cb', 11],
    ['B#', 0],
    [' g ', 7],
  ])('%s is pitch class %i', (text, expected) => {
    expect(pitchClassOfName(text)).toBe(expected)
  })

  test.each(['', 'H', 'C4', 'F major', 'constructor', 'cconstructor'])('%j is none', (text) => {
    expect(pitchClassOfName(text)).toBeNull()
  })
})
