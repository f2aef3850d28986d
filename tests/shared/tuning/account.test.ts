import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { speedOfSound } from '#shared/air/speedOfSound.ts'
import { type AccountCause, accountCauses, accountOf } from '#shared/tuning/account.ts'
import type { Instrument } from '#shared/tuning/instrument.ts'
import { tuningTables } from '#shared/tuning/tables.ts'
import { plain } from '#shared/valves/systems/plain.ts'
import { examples } from '#shared/workbook/examples/examples.ts'
import { instrumentOf, playedAir } from '#shared/workbook/instrumentOf.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { instrumentWith } from '../../fixtures/designs.ts'
import { exampleWorkbook } from '../../fixtures/exampleFiles.ts'

const openMm = 3968.7
const bass = (more: Partial<Instrument> = {}) => instrumentWith(openMm, plain(openMm, [2, 1, 3, 5]), more)

function termsOf(instrument: Instrument, pressed: readonly string[], harmonic: number, midi: number) {
  const { terms } = accountOf(instrument, pressed, harmonic, midi)
  return Object.fromEntries(terms.map(({ cause, cents }) => [cause, cents])) as Record<AccountCause, number>
}

/** Movements, offsets and playing air with which no term of an account is zero by itself. */
const disturbance = fc.record({
  outShare: fc.double({ min: 0.01, max: 0.45, noNaN: true }),
  offsetCents: fc.double({ min: -20, max: 20, noNaN: true }),
  playingTemperatureC: fc.double({ min: 5, max: 35, noNaN: true }),
  a4Hz: fc.double({ min: 425, max: 455, noNaN: true }),
  harmonic: fc.integer({ min: 2, max: 8 }),
})

type Disturbance = typeof disturbance extends fc.Arbitrary<infer T> ? T : never

function disturbed(workbook: Workbook, { playingTemperatureC, a4Hz, ...by }: Disturbance): Workbook {
  const designs = workbook.designs.map(
    (design): Design => ({
      ...design,
      instrument: {
        ...design.instrument,
        harmonicOffsetsCents: Object.fromEntries(
          Array.from({ length: 16 }, (_, i) => [String(i + 1), by.offsetCents * ((i % 3) - 0.7)]),
        ),
      },
      loops: design.loops.map((loop) => ({
        ...loop,
        slide: { outMm: by.outShare * loop.lengthMm, travelMm: loop.lengthMm },
      })),
      tuning: { kind: 'open', harmonic: by.harmonic },
    }),
  )
  return {
    ...workbook,
    air: { ...workbook.air, playingTemperatureC },
    reference: { ...workbook.reference, a4Hz },
    designs,
  }
}

describe('the terms of an account', () => {
  it.each(examples.map((example) => [example.id, exampleWorkbook(example)] as const))(
    'sum to the error in the note table, in every cell of %s, whatever is moved, measured or warmed',
    (_, example) => {
      fc.assert(
        fc.property(disturbance, (by) => {
          const workbook = disturbed(example, by)
          for (const design of workbook.designs) expectEveryCellAccounted(instrumentOf(workbook, design))
        }),
        { numRuns: 3 },
      )
    },
  )

  it('are the seven causes, each once, in their order', () => {
    expect(accountOf(bass(), ['1'], 3, 46).terms.map(({ cause }) => cause)).toEqual(accountCauses)
  })

  it('put 1-3 on the third harmonic at 30.3 for the tube and 2.0 for the harmonic', () => {
    const terms = termsOf(bass(), ['1', '3'], 3, 43)
    expect(terms.combination).toBeCloseTo(30.3, 1)
    expect(terms.harmonic).toBeCloseTo(1.955, 3)
    expect([terms.offset, terms.slidePull, terms.tuningSlide, terms.temperature]).toEqual([0, 0, 0, 0])
  })

  it('name the harmonic’s own offset', () => {
    expect(termsOf(bass({ harmonicOffsetsCents: { '5': 3 } }), [], 5, 57).offset).toBe(3)
    expect(termsOf(bass({ harmonicOffsetsCents: { '5': 3 } }), [], 6, 60).offset).toBe(0)
  })

  it('separate what the loop has fully in from what its slide is out', () => {
    const system = plain(openMm, [2])
    const lengthMm = system.loops[0]!.lengthMm
    const loops = [{ ...system.loops[0]!, slide: { outMm: 10, travelMm: 30 } }]
    const instrument = instrumentWith(openMm, { ...system, loops })
    const terms = termsOf(instrument, ['1'], 2, 39)
    const routeMm = openMm + lengthMm
    // 10 mm out is 20 mm of tube, 7.8 cents on this route: sharp without it, and flattened to zero by it.
    expect(terms.combination).toBeCloseTo(1200 * Math.log2(routeMm / (routeMm - 20)), 6)
    expect(terms.combination).toBeCloseTo(7.8, 1)
    expect(terms.slidePull).toBeCloseTo(-terms.combination, 6)
    expect(termsOf(instrument, [], 2, 41).slidePull).toBe(0)
  })

  it('are finite, and sum to the error, of a slide that is out farther than its loop is long', () => {
    const system = plain(openMm, [2])
    for (const outMm of [250, 1e6]) {
      const loops = [{ ...system.loops[0]!, slide: { outMm, travelMm: outMm } }]
      const instrument = instrumentWith(openMm, { ...system, loops })
      const terms = termsOf(instrument, ['1'], 2, 39)
      expect(terms.slidePull).toBeCloseTo(-200, 6)
      expect(terms.combination).toBeCloseTo(200, 6)
      expectEveryCellAccounted(instrument)
    }
  })

  it('give the playing air about 3 cents a degree, to every route alike', () => {
    const air = exampleWorkbook(examples[0]!).air
    const playedSpeedOfSoundMps = speedOfSound(playedAir({ ...air, playingTemperatureC: 25 }))
    const warm = bass({ playedSpeedOfSoundMps })
    expect(termsOf(warm, [], 4, 53).temperature).toBeGreaterThan(2.8)
    expect(termsOf(warm, [], 4, 53).temperature).toBeLessThan(3.2)
    expect(termsOf(warm, ['1', '3'], 6, 48).temperature).toBe(termsOf(warm, [], 4, 53).temperature)
  })

  it('show that the main slide flattens a long route less than the open one', () => {
    const sharp = bass({
      reference: { a4Hz: 435, temperament: { kind: 'equal' } },
      tuning: { kind: 'open', harmonic: 4 },
    })
    const open = termsOf(sharp, [], 4, 53).tuningSlide
    const long = termsOf(sharp, ['1', '2', '3', '4'], 4, 42).tuningSlide
    expect(open).toBeLessThan(-19)
    expect(Math.abs(long)).toBeLessThan(Math.abs(open) * 0.7)
  })

  it('take the drop of the fingering from the design where it has its own', () => {
    const asFour = accountOf(bass(), ['1'], 2, 37, 4)
    expect(asFour.requiredLengthMm).toBeCloseTo(openMm * 2 ** (4 / 12), 6)
    expect(asFour.fingering).toBe('1')
  })
})

function expectEveryCellAccounted(instrument: Instrument): void {
  const { notes, combinations } = tuningTables(instrument)
  const rows = new Map(combinations.map((row) => [row.fingering, row]))
  for (const note of notes) {
    for (const { pressed, harmonic, semitones, errorCents, fingering } of note.candidates()) {
      const account = accountOf(instrument, pressed, harmonic, note.midi, semitones)
      const sum = account.terms.reduce((total, { cents }) => total + cents, 0)
      expect(Math.abs(sum - errorCents)).toBeLessThan(1e-7)
      expect(account.totalCents).toBe(sum)
      expect(account.fingering).toBe(fingering)
      expect(Math.abs(account.lengthMm - rows.get(fingering)!.lengthMm)).toBeLessThan(1e-6)
      expect(Math.abs(account.requiredLengthMm - rows.get(fingering)!.requiredLengthMm)).toBeLessThan(1e-6)
    }
  }
}
