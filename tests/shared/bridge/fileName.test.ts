import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fileNameFor } from '#shared/bridge/fileName.ts'

describe('fileNameFor', () => {
  test('an empty name, or one of refused signs only, becomes untitled', () => {
    for (const name of ['', ' ', '...', '/\\:*?"<>|', '\u0000', '\ud800']) {
      expect(fileNameFor(name, '.ferrule')).toBe('untitled.ferrule')
    }
  })

  test('the ending is added once', () => {
    expect(fileNameFor('bass.ferrule', '.ferrule')).toBe('bass.ferrule')
    expect(fileNameFor('bass.FERRULE', '.ferrule')).toBe('bass.ferrule')
    expect(fileNameFor('bass v1.2', '.ferrule')).toBe('bass v1.2.ferrule')
  })

  test('a name that means a device is not one any more', () => {
    expect(fileNameFor('con', '.ferrule')).toBe('con file.ferrule')
    expect(fileNameFor('LPT1', '.csv')).toBe('LPT1 file.csv')
  })

  test('other scripts and signs of music stay', () => {
    expect(fileNameFor('Alto in E♭ – ホルン 🎺', '.ferrule')).toBe('Alto in E♭ – ホルン 🎺.ferrule')
  })

  test('marks that turn the reading direction, and could hide the ending, are dropped', () => {
    expect(fileNameFor('bass\u202Eexe', '.ferrule')).toBe('bass exe.ferrule')
  })

  test('a long name is cut, without a space before the ending', () => {
    const long = 'a'.repeat(199)
    expect(fileNameFor(`${long} bbb`, '.ferrule')).toBe(`${long}.ferrule`)
    expect(fileNameFor(`${long}bbb`, '.ferrule')).toBe(`${long}b.ferrule`)
  })

  test('any name at all becomes one that fits and needs no second cleaning', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 400 }), (name) => {
        const found = fileNameFor(name, '.ferrule')
        expect(found).not.toMatch(/[/\\:*?"<>|\p{Cc}]/u)
        expect(new TextEncoder().encode(found).length).toBeLessThanOrEqual(208)
        expect(fileNameFor(found, '.ferrule')).toBe(found)
      }),
    )
  })
})
