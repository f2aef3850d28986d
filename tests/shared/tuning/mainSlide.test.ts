import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Instrument } from '#shared/tuning/instrument.ts'
import { setMainSlide } from '#shared/tuning/mainSlide.ts'
import { tuningTables } from '#shared/tuning/tables.ts'
import { plain } from '#shared/valves/systems/plain.ts'
import { instrumentWith } from '../../fixtures/designs.ts'

const openMm = 3968.7
const bass = (more: Partial<Instrument> = {}) => instrumentWith(openMm, plain(openMm, [2, 1, 3]), more)
const at = (a4Hz: number, more: Partial<Instrument> = {}) =>
  bass({
    reference: { a4Hz, temperament: { kind: 'equal' } },
    tuning: { kind: 'open', harmonic: 4 },
    ...more,
  })

describe('the main slide', () => {
  it('brings the chosen open harmonic to zero, whatever the pitch, air, offsets and temperament', () => {
    const any = fc.record({
      a4Hz: fc.double({ min: 380, max: 480, noNaN: true }),
      harmonic: fc.integer({ min: 1, max: 16 }),
      offset: fc.double({ min: -40, max: 40, noNaN: true }),
      playedShare: fc.double({ min: 0.97, max: 1.03, noNaN: true }),
      temperament: fc.constantFrom(
        { kind: 'equal' } as const,
        { kind: 'just', key: 'F' } as const,
        { kind: 'meantone', key: 'C' } as const,
      ),
    })
    fc.assert(
      fc.property(any, ({ a4Hz, harmonic, offset, playedShare, temperament }) => {
        const instrument = at(a4Hz, {
          reference: { a4Hz, temperament },
          tuning: { kind: 'open', harmonic },
          harmonics: [harmonic, harmonic],
          harmonicOffsetsCents: { [harmonic]: offset },
          playedSpeedOfSoundMps: bass().speedOfSoundMps * playedShare,
        })
        const { notes, mainSlide } = tuningTables(instrument)
        const note = notes.find(({ midi }) => midi === mainSlide.midi)!
        const open = note.candidates().find(({ fingering }) => fingering === '0')!
        expect(Math.abs(open.errorCents)).toBeLessThan(1e-7)
        expect(mainSlide.movementMm).toBeCloseTo((mainSlide.openMm - mainSlide.nominalOpenMm) / 2, 9)
      }),
    )
  })

  // Harmonic 3 of 58.27 Hz, 7.5 cents sharp, is 175.569 Hz: 27.5 cents above the E♭3 of the temperament (172.8), 43.2
  // below its E3 (180), though E3 is the nearer of the equal scale.
  it('goes to the nearest note of the temperament, not of the equal scale', () => {
    const instrument = at(480, {
      fundamentalHz: 58.27,
      reference: { a4Hz: 480, temperament: { kind: 'just', key: 'C' } },
      tuning: { kind: 'open', harmonic: 3 },
      harmonicOffsetsCents: { 3: 7.5 },
    })
    const setting = setMainSlide(instrument)
    expect(setting.midi).toBe(51)
    expect(setting.openMm / setting.nominalOpenMm).toBeCloseTo(175.569 / 172.8, 4)
  })

  it('stays where it is without tuning', () => {
    expect(setMainSlide(bass({ reference: { a4Hz: 415, temperament: { kind: 'equal' } } }))).toMatchObject({
      movementMm: 0,
      midi: null,
      beyondMm: 0,
    })
  })

  it('moves half of the tube: 20 cents down on 3.97 m is 23 mm out, the same up is 23 mm in', () => {
    expect(setMainSlide(at(435)).movementMm).toBeCloseTo(22.8, 1)
    expect(setMainSlide(at(445)).movementMm).toBeCloseTo(-22.3, 1)
    expect(setMainSlide(at(435)).midi).toBe(53)
  })

  it('says how far it falls short of the tuning, out and in, and nothing within its travel', () => {
    const mainSlide = { outMm: 12, travelMm: 30 }
    expect(setMainSlide(at(435, { mainSlide })).beyondMm).toBeCloseTo(22.8 + 12 - 30, 1)
    expect(setMainSlide(at(445, { mainSlide })).beyondMm).toBeCloseTo(12 - 22.3, 1)
    expect(setMainSlide(at(438, { mainSlide })).beyondMm).toBe(0)
    expect(setMainSlide(at(415)).beyondMm).toBe(0)
  })

  it('tunes to the nearest note when the pitch is another altogether', () => {
    // Against A 415 the open fourth harmonic is an F sharp.
    expect(setMainSlide(at(415)).midi).toBe(54)
  })
})
