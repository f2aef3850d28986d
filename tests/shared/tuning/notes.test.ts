import { describe, expect, it } from 'vitest'
import { loopForDropMm } from '#shared/tubing/requiredLength.ts'
import type { Instrument } from '#shared/tuning/instrument.ts'
import { type Note, noteTable, playedCandidate } from '#shared/tuning/notes.ts'
import { tuningTables } from '#shared/tuning/tables.ts'
import { ascending } from '#shared/valves/systems/ascending.ts'
import { cutOff } from '#shared/valves/systems/independent.ts'
import { plain } from '#shared/valves/systems/plain.ts'
import { systems } from '#shared/valves/systems/systems.ts'
import { instrumentWith } from '../../fixtures/designs.ts'

/** The bass in F: with A4 at 440 its harmonic 1 is F1. */
const openMm = 3968.7
const inF = { fundamentalHz: 440 * 2 ** (-40 / 12) }
const bass = (drops: readonly number[], more: Partial<Instrument> = {}) =>
  instrumentWith(openMm, plain(openMm, drops), { ...inF, ...more })

const notesOf = (instrument: Instrument): readonly Note[] => tuningTables(instrument).notes
const noteAt = (instrument: Instrument, midi: number): Note =>
  notesOf(instrument).find((note) => note.midi === midi)!
/** `fingering/harmonic` of the usual way to play a note. */
const usual = (instrument: Instrument, midi: number): string | null => {
  const candidate = noteAt(instrument, midi).usual
  return candidate === null ? null : `${candidate.fingering}/${candidate.harmonic}`
}

describe('the usual fingering of a bass in F', () => {
  it('runs down from each harmonic on three valves, with 1-2 for three semitones', () => {
    const from36To48 = Array.from({ length: 13 }, (_, i) => usual(bass([2, 1, 3]), 36 + i))
    expect(from36To48).toEqual([
      '1-3/2',
      '2-3/2',
      '1-2/2',
      '1/2',
      '2/2',
      '0/2',
      '1-2-3/3',
      '1-3/3',
      '2-3/3',
      '1-2/3',
      '1/3',
      '2/3',
      '0/3',
    ])
  })

  it('takes 4 before 1-3 and 2-4 before 1-2-3 on four valves', () => {
    const four = bass([2, 1, 3, 5])
    expect([36, 43, 35, 42].map((midi) => usual(four, midi))).toEqual(['4/2', '4/3', '2-4/2', '2-4/3'])
  })

  it('prefers the shortest tube: open on 9 for G and on 10 for A, 2 on 10 for G sharp', () => {
    expect([67, 68, 69].map((midi) => usual(bass([2, 1, 3]), midi))).toEqual(['0/9', '2/10', '0/10'])
  })

  it('is never on harmonic 7, 11, 13 or 14', () => {
    for (const { usual } of notesOf(bass([2, 1, 3, 5], { harmonics: [1, 16] }))) {
      expect([7, 11, 13, 14]).not.toContain(usual?.harmonic)
    }
  })

  it('is none where only such a harmonic comes near, and then the nearest is played', () => {
    const note = noteAt(bass([2, 1, 3], { harmonics: [7, 7] }), 63)
    expect(note.usual).toBeNull()
    expect(note.nearest).toMatchObject({ fingering: '0', harmonic: 7 })
    expect(playedCandidate(note)).toBe(note.nearest)
  })
})

describe('the usual fingering with an ascending third', () => {
  const third = instrumentWith(openMm, ascending(openMm, [2, 1], 2), inF)

  it('is the third valve on 4 for G, the shorter tube, and not the first on 5', () => {
    expect(usual(third, 55)).toBe('3/4')
    expect(noteAt(third, 55).usual!.errorCents).toBeCloseTo(0, 1)
  })

  it('is still open or the second where they have the note', () => {
    expect([53, 52, 56, 57].map((midi) => usual(third, midi))).toEqual(['0/4', '2/4', '2/5', '0/5'])
  })
})

describe('the usual fingering of a cut-off instrument', () => {
  it('is the shortest tube, as a slide is kept in: 1 before 5 where both have the note', () => {
    const open = 4204
    const sixValves = instrumentWith(open, cutOff(open, 6), { fundamentalHz: 440 * 2 ** (-41 / 12) })
    expect([46, 53, 58, 57, 52].map((midi) => usual(sixValves, midi))).toEqual([
      '1/2',
      '1/3',
      '1/4',
      '2/4',
      '2/3',
    ])
  })
})

describe('the nearest candidate', () => {
  it('has the smallest error of all', () => {
    const three = bass([2, 1, 3])
    for (const note of notesOf(three)) {
      const least = Math.min(...note.candidates().map(({ errorCents }) => Math.abs(errorCents)))
      expect(Math.abs(note.nearest!.errorCents)).toBeCloseTo(least, 9)
    }
    expect(noteAt(three, 60).nearest).toMatchObject({ fingering: '0', harmonic: 6 })
    expect(noteAt(three, 60).nearest!.errorCents).toBeCloseTo(1.955, 3)
  })

  it('may be another than the usual: A on the second valve of 3 instead of the open fifth', () => {
    const note = noteAt(bass([2, 1, 3]), 57)
    expect(note.usual).toMatchObject({ fingering: '0', harmonic: 5 })
    expect(note.usual!.errorCents).toBeCloseTo(-13.686, 3)
    expect(note.nearest).toMatchObject({ harmonic: 6 })
    expect(note.nearest!.errorCents).toBeCloseTo(1.955, 3)
  })
})

describe('the candidates of a note', () => {
  it('lie within 60 cents of it, in every system', () => {
    for (const system of systems) {
      const { notes } = tuningTables(instrumentWith(openMm, system.build(openMm), inF))
      expect(notes.length).toBeGreaterThan(20)
      for (const { candidates, targetHz } of notes) {
        for (const { hz, errorCents } of candidates()) {
          expect(Math.abs(errorCents)).toBeLessThanOrEqual(60)
          expect(1200 * Math.log2(hz / targetHz)).toBeCloseTo(errorCents, 8)
        }
      }
    }
  })

  it('include one 59 cents off and leave out one 61 cents off', () => {
    const foundOffBy = (cents: number) => {
      const valves = [{ id: '1', semitones: 2 }]
      const lengthMm = loopForDropMm(openMm, 2 - cents / 100)
      const parts = { valves, loops: [{ id: 'L1', lengthMm, pressed: ['1'] }], fingerings: 'all' } as const
      const notes = notesOf(instrumentWith(openMm, parts, { ...inF, harmonics: [2, 3] }))
      return notes.find(({ midi }) => midi === 39) !== undefined
    }
    expect(foundOffBy(59)).toBe(true)
    expect(foundOffBy(61)).toBe(false)
  })

  it('are found where the temperament puts the note a semitone from its place', () => {
    const cents = [0, 0, 0, 0, 0, 100, 0, 0, 0, 0, 0, 0]
    const reference = { a4Hz: 440, temperament: { kind: 'custom', cents } } as const
    const note = noteAt(bass([2, 1, 3], { reference }), 53)
    // F is a semitone high, so it is played as F sharp: 1-2 on 5.
    expect(note.usual).toMatchObject({ fingering: '1-2', harmonic: 5 })
  })

  it('are none in a gap, which stays in the table', () => {
    const two = notesOf(bass([2, 1], { harmonics: [2, 3] }))
    expect(two.map(({ midi }) => midi)).toEqual([38, 39, 40, 41, 42, 43, 44, 45, 46, 47, 48])
    expect(two.filter(({ candidates }) => candidates().length === 0).map(({ midi }) => midi)).toEqual([
      42, 43, 44,
    ])
    expect(two[4]).toMatchObject({ usual: null, nearest: null })
  })

  it('carry the offset of their harmonic and no other’s', () => {
    const plainError = noteAt(bass([2, 1, 3]), 57).usual!.errorCents
    const offset = bass([2, 1, 3], { harmonicOffsetsCents: { '5': 8 } })
    expect(noteAt(offset, 57).usual!.errorCents).toBeCloseTo(plainError + 8, 9)
    expect(noteAt(offset, 60).usual!.errorCents).toBeCloseTo(1.955, 3)
  })

  it('are none at all for a design without fingerings', () => {
    expect(noteTable(bass([2, 1, 3]), [], [])).toEqual([])
  })
})

describe('a chosen fingering', () => {
  const chosen = { '52': { pressed: ['3', '2'], harmonic: 5 }, '57': { pressed: ['3'], harmonic: 6 } }
  const instrument = bass([2, 1, 3], { chosen })

  it('counts instead of the usual one, which is still marked', () => {
    const note = noteAt(instrument, 57)
    expect(playedCandidate(note)).toMatchObject({ fingering: '3', harmonic: 6 })
    expect(note.usual).toMatchObject({ fingering: '0', harmonic: 5 })
  })

  it('is kept far from its note, and says how far', () => {
    const note = noteAt(instrument, 52)
    expect(note.chosen).toMatchObject({ fingering: '2-3', harmonic: 5 })
    expect(note.chosen!.errorCents).toBeGreaterThan(60)
  })

  it('that the design does not have is passed over', () => {
    const parts = { ...plain(openMm, [2, 1, 3]), fingerings: [{ pressed: [] }, { pressed: ['1'] }] }
    const note = noteAt(instrumentWith(openMm, parts, { ...inF, chosen }), 57)
    expect(note.chosen).toBeNull()
    expect(playedCandidate(note)).toBe(note.usual)
  })
})

describe('a fingering that comes near a note on two harmonics', () => {
  const parts = { ...plain(openMm, [2, 1, 3]), fingerings: [{ pressed: [] }] }
  const open = instrumentWith(openMm, parts, { ...inF, harmonics: [1, 32] })

  // Harmonic 26 lies 12·log2(26) = 56.405 semitones above the first, 27 lies 57.059: D6 is 57 above F1.
  it('is usual on the nearer, with both to choose from', () => {
    expect(usual(open, 86)).toBe('0/27')
    expect(
      noteAt(open, 86)
        .candidates()
        .map(({ harmonic }) => harmonic),
    ).toEqual([26, 27])
    expect(usual(open, 89)).toBe('0/32')
  })
})

describe('a transposing instrument', () => {
  it('has the same sounding notes under other written names', () => {
    const concert = notesOf(bass([2, 1, 3]))
    const transposing = notesOf(bass([2, 1, 3], { transposition: -7 }))
    expect(transposing.map(({ midi }) => midi)).toEqual(concert.map(({ midi }) => midi))
    expect(transposing.map(({ midi, writtenMidi }) => writtenMidi - midi)).toEqual(concert.map(() => 7))
  })
})
