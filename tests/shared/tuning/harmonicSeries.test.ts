import { describe, expect, it } from 'vitest'
import { openLengthMm } from '#shared/tubing/openRoute.ts'
import { harmonicSeries, scaleOn, soundedNotes } from '#shared/tuning/harmonicSeries.ts'
import { tuningTables } from '#shared/tuning/tables.ts'
import { plain } from '#shared/valves/systems/plain.ts'
import { instrumentWith } from '../../fixtures/designs.ts'

const instrument = instrumentWith(2000, plain(2000, [2, 1, 3]))

describe('the harmonic series', () => {
  it('stands against the tempered scale on its fundamental as the textbooks say', () => {
    const cents = harmonicSeries(instrument, 2000, 16).map(({ centsFromScale }) => centsFromScale)
    const known = [0, 0, 2, 0, -13.7, 2, -31.2, 0, 3.9, -13.7, -48.7, 2, 40.5, -31.2, -11.7, 0]
    for (const [i, expected] of known.entries()) expect(cents[i]).toBeCloseTo(expected, 1)
  })

  it('is evenly spaced in hertz', () => {
    const hz = harmonicSeries(instrument, 2000, 12).map((row) => row.hz)
    for (const [i, each] of hz.entries()) expect(each).toBeCloseTo((i + 1) * hz[0]!, 9)
  })

  it('moves with a measured offset, which never makes it another step of the scale', () => {
    const [, , , , fifth] = harmonicSeries({ ...instrument, harmonicOffsetsCents: { '5': 70 } }, 2000, 5)
    expect(fifth!.centsFromScale).toBeCloseTo(56.3, 1)
    expect(fifth!.nearestSemitones).toBe(28)
  })

  it('is told apart from its error against the workbook’s scale', () => {
    const sharpHall = { ...instrument, reference: { a4Hz: 442, temperament: { kind: 'equal' as const } } }
    const inA = openLengthMm(instrument.speedOfSoundMps, 55)
    const [plainRow, sharpRow] = [instrument, sharpHall].map((each) => harmonicSeries(each, inA, 7)[6]!)
    expect(plainRow!.errorCents).toBeCloseTo(plainRow!.centsFromScale, 9)
    expect(sharpRow!.centsFromScale).toBe(plainRow!.centsFromScale)
    expect(plainRow!.errorCents - sharpRow!.errorCents).toBeCloseTo(1200 * Math.log2(442 / 440), 9)
  })
})

describe('the notes that a route sounds', () => {
  it('are those of the note table', () => {
    const { combinations, notes } = tuningTables(instrument)
    const row = combinations.find(({ fingering }) => fingering === '1-3')!
    const sounded = soundedNotes(instrument, row.lengthMm)
    expect(sounded.map(({ harmonic }) => harmonic)).toEqual([2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])
    for (const { harmonic, midi, hz, errorCents } of sounded) {
      const candidate = notes
        .find((note) => note.midi === midi)!
        .candidates()
        .find((each) => each.fingering === '1-3' && each.harmonic === harmonic)!
      expect(hz).toBeCloseTo(candidate.hz, 9)
      expect(errorCents).toBeCloseTo(candidate.errorCents, 9)
    }
  })

  it('are the nearest in the temperament, not on the equal scale', () => {
    const cents = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 90, 0]
    const reference = { a4Hz: 440, temperament: { kind: 'custom' as const, cents } }
    const everyNote = Array.from({ length: 40 }, (_, i) => 1900 + 7 * i).flatMap((mm) =>
      soundedNotes({ ...instrument, reference }, mm),
    )
    for (const { errorCents } of everyNote) expect(Math.abs(errorCents)).toBeLessThanOrEqual(95.001)
    const onB = everyNote.filter(({ midi }) => midi % 12 === 10)
    expect(onB.length).toBeGreaterThan(0)
    for (const { errorCents } of onB) expect(Math.abs(errorCents)).toBeLessThanOrEqual(95.001)
  })
})

describe('the scale on a fundamental', () => {
  it('has both its ends when they are an octave apart, and one note when there is no room', () => {
    expect(scaleOn(100, 200)).toHaveLength(13)
    expect(scaleOn(100, 200).at(-1)).toBeCloseTo(200, 9)
    expect(scaleOn(100, 100)).toEqual([100])
    expect(scaleOn(100, 50)).toEqual([100])
  })

  it('has its last note wherever it ends on one, and not before', () => {
    for (let steps = 0; steps <= 60; steps++) {
      expect(scaleOn(43.654, 43.654 * 2 ** (steps / 12))).toHaveLength(steps + 1)
      expect(scaleOn(43.654, 43.654 * 2 ** ((steps + 0.99) / 12))).toHaveLength(steps + 1)
    }
  })
})
