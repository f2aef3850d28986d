import { describe, expect, it } from 'vitest'
import { spreadOf } from '#shared/tuning/summary.ts'
import { tuningTables } from '#shared/tuning/tables.ts'
import { compensating } from '#shared/valves/systems/compensating.ts'
import { compensatingDouble, fullDouble } from '#shared/valves/systems/double.ts'
import { cutOff, independentByCombination } from '#shared/valves/systems/independent.ts'
import type { SystemParts } from '#shared/valves/systems/parts.ts'
import { plain } from '#shared/valves/systems/plain.ts'
import { instrumentWith } from '../../fixtures/designs.ts'

const openMm = 3950
const summaryOf = (parts: SystemParts) => tuningTables(instrumentWith(openMm, parts)).summary

describe('the summary of a bass of 3950 mm', () => {
  it('with four plain valves: rms 76.2 and at most +175.3 cents at 1-2-3-4, over twelve fingerings', () => {
    const { byFingering } = summaryOf(plain(openMm, [2, 1, 3, 5]))
    expect(byFingering.rmsCents).toBeCloseTo(76.2, 1)
    expect(byFingering.largestCents).toBeCloseTo(175.3, 1)
    expect(byFingering.largestAt).toBe('1-2-3-4')
    expect(byFingering.count).toBe(12)
  })

  it('compensating on the fourth: rms 19.4 and at most +53.6 cents at 1-2-3-4', () => {
    const { byFingering } = summaryOf(compensating(openMm, [2, 1, 3, 5], 4))
    expect(byFingering.rmsCents).toBeCloseTo(19.4, 1)
    expect(byFingering.largestCents).toBeCloseTo(53.6, 1)
    expect(byFingering.largestAt).toBe('1-2-3-4')
  })

  it('plain, has 6.74 m of tube: 3.95 m of body and 2.79 m in four loops', () => {
    const summary = summaryOf(plain(openMm, [2, 1, 3, 5]))
    const loopsMm = openMm * (2 ** (2 / 12) + 2 ** (1 / 12) + 2 ** (3 / 12) + 2 ** (5 / 12) - 4)
    expect(summary.bodyMm).toBeCloseTo(openMm, 9)
    expect(summary.loopsMm).toBeCloseTo(loopsMm, 6)
    expect(summary.tubeMm / 1000).toBeCloseTo(6.74, 2)
    expect(summary.loops).toBe(4)
    expect(summary.mostLoopsInRoute).toBe(4)
  })

  it('compensating, has more tube and seven loops, all in the route of 1-2-3-4', () => {
    const summary = summaryOf(compensating(openMm, [2, 1, 3, 5], 4))
    expect(summary.loops).toBe(7)
    expect(summary.loopsInRoute).toMatchObject({ '0': 0, '4': 1, '1-4': 3, '1-2-3-4': 7 })
    expect(summary.mostLoopsInRoute).toBe(7)
    expect(summary.tubeMm).toBeGreaterThan(summaryOf(plain(openMm, [2, 1, 3, 5])).tubeMm)
  })

  it('independent by combination, has no error, and one loop of fifteen in any route', () => {
    const summary = summaryOf(independentByCombination(openMm, [2, 1, 3, 5]))
    expect(summary.byFingering.rmsCents).toBeLessThan(1e-9)
    expect([summary.loops, summary.mostLoopsInRoute]).toEqual([15, 1])
  })

  it('as a cut-off system, holds in its loops what its body lacks: no more tube than the open length', () => {
    const summary = summaryOf(cutOff(openMm, 6))
    expect(summary.tubeMm).toBeCloseTo(openMm, 9)
    expect(summary.bodyMm).toBeCloseTo(openMm * 2 ** (-6 / 12), 9)
  })

  it('as a double, has less tube when the short side’s loops serve both sides', () => {
    const full = summaryOf(fullDouble(openMm, [2, 1, 3], 5))
    const shared = summaryOf(compensatingDouble(openMm, [2, 1, 3], 5))
    expect(full.loops).toBe(shared.loops)
    expect(full.byFingering.rmsCents).toBeCloseTo(shared.byFingering.rmsCents, 9)
    expect(full.tubeMm - shared.tubeMm).toBeCloseTo(
      openMm * 2 ** (-5 / 12) * (2 ** (2 / 12) + 2 ** (1 / 12) + 2 ** (3 / 12) - 3),
      6,
    )
  })

  it('by note, follows the chosen fingering', () => {
    const parts = plain(openMm, [2, 1, 3])
    const one = { harmonics: [5, 6] as const }
    const usual = tuningTables(instrumentWith(openMm, parts, one))
    const midi = usual.notes.find(({ usual }) => usual?.fingering === '0' && usual.harmonic === 5)!.midi
    const chosen = { [midi]: { pressed: ['3'], harmonic: 6 } }
    const { summary } = tuningTables(instrumentWith(openMm, parts, { ...one, chosen }))
    expect(summary.byNote.count).toBe(usual.summary.byNote.count)
    expect(summary.byNote.rmsCents).not.toBeCloseTo(usual.summary.byNote.rmsCents, 3)
    expect(summary.byFingering).toEqual(usual.summary.byFingering)
  })
})

describe('the spread of some errors', () => {
  it('is zero of none, and says that it is nowhere', () => {
    expect(spreadOf([])).toEqual({ rmsCents: 0, largestCents: 0, largestAt: null, count: 0 })
  })

  it('has the largest with its sign and its place', () => {
    const errors = [
      { at: 'a', errorCents: 3 },
      { at: 'b', errorCents: -4 },
    ]
    expect(spreadOf(errors)).toEqual({
      rmsCents: Math.sqrt(12.5),
      largestCents: -4,
      largestAt: 'b',
      count: 2,
    })
  })
})
