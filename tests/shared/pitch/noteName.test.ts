import { describe, expect, test } from 'vitest'
import { noteName, pitchClassName, plainNoteName } from '#shared/pitch/noteName.ts'

describe('the name of a note', () => {
  test('counts octaves from C, middle C being C4', () => {
    expect([59, 60, 69].map((midi) => noteName(midi, 'sharps'))).toEqual(['B3', 'C4', 'A4'])
  })

  test('spells the black keys with sharps or with flats', () => {
    expect(noteName(54, 'sharps')).toBe('F♯3')
    expect(noteName(54, 'flats')).toBe('G♭3')
    expect(noteName(58, 'flats')).toBe('B♭3')
  })

  test('is plain ASCII in files', () => {
    expect(plainNoteName(48, 'flats')).toBe('C3')
    expect(plainNoteName(54, 'sharps')).toBe('F#3')
    expect(plainNoteName(46, 'flats')).toBe('Bb2')
  })

  test('has a minus sign below octave 0', () => {
    expect(noteName(0, 'sharps')).toBe('C−1')
    expect(plainNoteName(0, 'sharps')).toBe('C-1')
  })

  test('goes on below midi note 0', () => {
    expect(plainNoteName(-1, 'sharps')).toBe('B-2')
  })

  test('can leave the octave out', () => {
    expect(pitchClassName(53, 'flats')).toBe('F')
  })

  test('throws for a number between two notes', () => {
    expect(() => noteName(60.5, 'sharps')).toThrow(RangeError)
    expect(() => plainNoteName(Number.NaN, 'flats')).toThrow(RangeError)
  })
})
