import { describe, expect, it } from 'vitest'
import { combinationTable } from '#shared/tuning/combinations.ts'
import { fingeringsOf } from '#shared/valves/fingerings.ts'
import { routing } from '#shared/valves/route.ts'
import { ascending } from '#shared/valves/systems/ascending.ts'
import { compensating } from '#shared/valves/systems/compensating.ts'
import { compensatingDouble, fullDouble } from '#shared/valves/systems/double.ts'
import { cutOff, independentByCombination, independentByStep } from '#shared/valves/systems/independent.ts'
import type { SystemParts } from '#shared/valves/systems/parts.ts'
import { plain } from '#shared/valves/systems/plain.ts'
import { systemOf, systems } from '#shared/valves/systems/systems.ts'
import schemes from '../../fixtures/schemes.json' with { type: 'json' }

const built: Readonly<Record<string, (openLengthMm: number) => SystemParts>> = {
  'plain, three valves': (mm) => plain(mm, [2, 1, 3]),
  'plain, four valves': (mm) => plain(mm, [2, 1, 3, 5]),
  'compensating, third valve switches': (mm) => compensating(mm, [2, 1, 3], 3),
  'compensating, fourth valve switches': (mm) => compensating(mm, [2, 1, 3, 5], 4),
  'three-valve compensating block with a plain fourth': (mm) => compensating(mm, [2, 1, 3, 5], 3),
  'full double, change valve to the short side': (mm) => fullDouble(mm, [2, 1, 3], 5),
  'compensating double, change valve to the short side': (mm) => compensatingDouble(mm, [2, 1, 3], 5),
  'independent, one loop a combination': (mm) => independentByCombination(mm, [2, 1, 3]),
  'independent, one loop a step': (mm) => independentByStep(mm, [1, 2, 3, 4, 5, 6]),
  'cut-off, open is the longest route': (mm) => cutOff(mm, 6),
  'ascending third valve': (mm) => ascending(mm, [2, 1], 2),
  'early order, the first valve is the semitone': (mm) => plain(mm, [1, 2]),
}

describe('a constructed system', () => {
  it('is checked against every reference case', () => {
    expect(Object.keys(built).sort()).toEqual(schemes.cases.map(({ name }) => name).sort())
  })

  for (const scheme of schemes.cases) {
    it(`has the reference valves and loops: ${scheme.name}`, () => {
      const parts = built[scheme.name]!(scheme.openLengthMm)
      expect(parts.valves).toEqual(scheme.valves)
      expect(gatesOf(parts.loops)).toEqual(gatesOf(scheme.loops))
      const lengths = byGate(parts.loops)
      for (const loop of scheme.loops) expect(lengths.get(gateOf(loop))).toBeCloseTo(loop.lengthMm, 6)
    })
  }
})

describe('the combination table', () => {
  for (const scheme of schemes.cases) {
    it(`equals the reference row for row: ${scheme.name}`, () => {
      const system = routing(scheme.openLengthMm, scheme.valves, scheme.loops)
      const rows = combinationTable(
        scheme.openLengthMm,
        system,
        fingeringsOf(scheme.valves, scheme.fingerings),
      )
      expect(rows.map(({ fingering, semitones, loops }) => ({ fingering, semitones, loops }))).toEqual(
        scheme.expected.map(({ fingering, semitones, loops }) => ({ fingering, semitones, loops })),
      )
      for (const [i, row] of rows.entries()) {
        const expected = scheme.expected[i]!
        expect(Math.abs(row.errorCents - expected.errorCents)).toBeLessThan(1e-4)
        expect(row.lengthMm).toBeCloseTo(expected.lengthMm, 5)
        expect(row.requiredLengthMm).toBeCloseTo(expected.requiredLengthMm, 5)
      }
    })
  }
})

describe('the systems offered', () => {
  it('build sound parts at any length: known valves, unique ids, positive loops', () => {
    for (const system of systems) {
      for (const lengthMm of [700, 4000, 9000]) {
        const { valves, loops } = system.build(lengthMm)
        const ids = valves.map(({ id }) => id)
        expect(new Set(ids).size).toBe(ids.length)
        expect(new Set(loops.map(({ id }) => id)).size).toBe(loops.length)
        for (const loop of loops) {
          expect(loop.lengthMm).toBeGreaterThan(0)
          for (const id of [...loop.pressed, ...('released' in loop ? (loop.released ?? []) : [])]) {
            expect(ids).toContain(id)
          }
        }
      }
    }
  })

  it('have each loop exact in the company it is made for', () => {
    const parts = systemOf('plain-6')!.build(2000)
    const rows = combinationTable(
      2000,
      routing(2000, parts.valves, parts.loops),
      fingeringsOf(parts.valves, 'all'),
    )
    const error = (name: string) => rows.find(({ fingering }) => fingering === name)!.errorCents
    expect(error('4-5')).toBeCloseTo(0, 9)
    expect(error('4-6')).toBeCloseTo(0, 9)
    expect(error('5')).toBeLessThan(-50)
  })

  it('are found by id, and nothing is found by another', () => {
    expect(systemOf('cut-off')?.name).toBe('Cut-off, six valves')
    expect(systemOf('nothing')).toBeUndefined()
  })
})

type Gated = { lengthMm: number; pressed: readonly string[]; released?: readonly string[] }

function gateOf({ pressed, released }: Gated): string {
  return `${[...pressed].sort().join(' ')} / ${[...(released ?? [])].sort().join(' ')}`
}

function gatesOf(loops: readonly Gated[]): readonly string[] {
  return loops.map(gateOf).sort()
}

function byGate(loops: readonly Gated[]): ReadonlyMap<string, number> {
  return new Map(loops.map((loop) => [gateOf(loop), loop.lengthMm]))
}
