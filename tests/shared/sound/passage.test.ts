import { describe, expect, it } from 'vitest'
import { passageKinds, passageNotes, passagePiece } from '#shared/sound/passage.ts'
import { mostShare, partsAt } from '#shared/sound/piece.ts'
import { playedCandidate } from '#shared/tuning/notes.ts'
import { tuningTables } from '#shared/tuning/tables.ts'
import { plain } from '#shared/valves/systems/plain.ts'
import { instrumentWith } from '../../fixtures/designs.ts'

const openMm = 3968.7
const bass = instrumentWith(openMm, plain(openMm, [2, 1, 3]), { fundamentalHz: 440 * 2 ** (-40 / 12) })
const { notes } = tuningTables(bass)
const f2 = 41
const midisOf = (...asked: Parameters<typeof passageNotes>) => passageNotes(...asked).map(({ midi }) => midi)

describe('the notes of a passage', () => {
  it('of a scale run to its octave, or to the top of the compass', () => {
    expect(midisOf(notes, 'majorScale', f2, false)).toEqual([41, 43, 45, 46, 48, 50, 52, 53])
    expect(midisOf(notes, 'minorScale', f2, false)).toEqual([41, 43, 44, 46, 48, 49, 51, 53])
    expect(midisOf(notes, 'chromaticScale', f2, true)).toEqual(
      notes.map(({ midi }) => midi).filter((midi) => midi >= f2),
    )
  })

  it('of a chord stay within its octave, whatever is asked of scales', () => {
    expect(midisOf(notes, 'majorChord', f2, true)).toEqual([41, 45, 48, 53])
    expect(midisOf(notes, 'minorChord', f2, false)).toEqual([41, 44, 48, 53])
  })

  it('leave out what lies above the compass', () => {
    const top = notes.at(-1)!.midi
    expect(midisOf(notes, 'fifth', top, false)).toEqual([top])
    expect(midisOf([], 'majorScale', f2, true)).toEqual([])
  })

  it('sound as the fingering that counts plays them', () => {
    for (const { midi, played } of passageNotes(notes, 'chromaticScale', f2, true)) {
      const candidate = playedCandidate(notes.find((note) => note.midi === midi)!)
      expect(played?.hz).toBe(candidate?.hz)
      expect(played?.errorCents).toBe(candidate?.errorCents)
    }
  })
})

describe('the piece of a passage', () => {
  it.each(passageKinds)('never has more than the whole level at once: %s', (kind) => {
    for (const pitch of ['asPlayed', 'inTune'] as const) {
      expect(mostShare(passagePiece(kind, passageNotes(notes, kind, f2, true), pitch))).toBeLessThanOrEqual(
        1 + 1e-12,
      )
    }
  })

  it('has every note of a chord at the end, and one note of a scale at a time', () => {
    const chord = passagePiece('majorChord', passageNotes(notes, 'majorChord', f2, false), 'asPlayed')
    expect(partsAt(chord, chord.lengthS - 1)).toEqual([0, 1, 2, 3])
    const scale = passagePiece('majorScale', passageNotes(notes, 'majorScale', f2, false), 'asPlayed')
    for (let atS = 0; atS < scale.lengthS; atS += 0.01) expect(partsAt(scale, atS)).toHaveLength(1)
    expect(scale.tones.at(-1)!.durationS).toBeGreaterThan(scale.tones[0]!.durationS)
  })

  it('is silent where nothing reaches a note, and lasts as long', () => {
    const some = passageNotes(notes, 'majorScale', f2, false)
    const gap = some.map((note, i) => (i === 3 ? { ...note, played: null } : note))
    const piece = passagePiece('majorScale', gap, 'asPlayed')
    expect(piece.tones.map(({ part }) => part)).toEqual([0, 1, 2, 4, 5, 6, 7])
    expect(piece.lengthS).toBe(passagePiece('majorScale', some, 'asPlayed').lengthS)
    expect(passagePiece('majorScale', gap, 'inTune').tones).toHaveLength(8)
  })

  it('of no notes is nothing', () => {
    expect(passagePiece('majorChord', [], 'asPlayed')).toEqual({ tones: [], lengthS: 0 })
  })
})
