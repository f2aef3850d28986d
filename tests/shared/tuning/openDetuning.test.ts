import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { accountOf } from '#shared/tuning/account.ts'
import type { Instrument } from '#shared/tuning/instrument.ts'
import { tuningTables } from '#shared/tuning/tables.ts'
import { plain } from '#shared/valves/systems/plain.ts'
import { instrumentWith } from '../../fixtures/designs.ts'

const openMm = 2000
const horn = (more: Partial<Instrument> = {}) => instrumentWith(openMm, plain(openMm, [2, 1, 3]), more)

const errorOf = (instrument: Instrument, fingering: string) =>
  tuningTables(instrument).combinations.find((row) => row.fingering === fingering)!.errorCents

const detuned = fc.record({
  openDetuningCents: fc.double({ min: -100, max: 100, noNaN: true }),
  tuning: fc.constantFrom({ kind: 'none' } as const, { kind: 'open', harmonic: 4 } as const),
})

describe('an open note set off its pitch on purpose', () => {
  it('stands at just that error, whatever the tuning of the main slide', () => {
    fc.assert(
      fc.property(detuned, (more) => {
        expect(errorOf(horn(more), '0')).toBeCloseTo(more.openDetuningCents, 8)
      }),
    )
  })

  it('moves every other fingering the same way, the longer ones less', () => {
    const [plainHorn, sharp] = [horn(), horn({ openDetuningCents: 10 })]
    const moved = (fingering: string) => errorOf(sharp, fingering) - errorOf(plainHorn, fingering)
    expect(moved('2')).toBeGreaterThan(moved('1-2-3'))
    expect(moved('1-2-3')).toBeGreaterThan(5)
  })

  it('is a movement of the main slide: 10 cents up on 2 m is 5.8 mm in', () => {
    expect(tuningTables(horn({ openDetuningCents: 10 })).mainSlide.movementMm).toBeCloseTo(-5.76, 2)
  })

  it('leaves every required length as it was', () => {
    const required = (instrument: Instrument) =>
      tuningTables(instrument).combinations.map(({ requiredLengthMm }) => requiredLengthMm)
    expect(required(horn({ openDetuningCents: -25 }))).toEqual(required(horn()))
  })

  it('is in the account, which still sums to the error of the note', () => {
    fc.assert(
      fc.property(detuned, (more) => {
        const instrument = horn(more)
        const note = tuningTables(instrument).notes.find(({ candidates }) =>
          candidates().some(({ fingering }) => fingering === '1-2-3'),
        )!
        const { pressed, harmonic, errorCents } = note
          .candidates()
          .find(({ fingering }) => fingering === '1-2-3')!
        expect(accountOf(instrument, pressed, harmonic, note.midi).totalCents).toBeCloseTo(errorCents, 8)
      }),
    )
  })
})
