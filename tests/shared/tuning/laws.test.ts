import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Combination, combinationTable } from '#shared/tuning/combinations.ts'
import { fingeringsOf } from '#shared/valves/fingerings.ts'
import type { Loop } from '#shared/valves/loop.ts'
import { routing } from '#shared/valves/route.ts'
import { compensating } from '#shared/valves/systems/compensating.ts'
import { independentByCombination } from '#shared/valves/systems/independent.ts'
import { numberedValves, type SystemParts } from '#shared/valves/systems/parts.ts'
import { plain } from '#shared/valves/systems/plain.ts'
import type { Valve } from '#shared/valves/valve.ts'

const lengthMm = fc.double({ min: 100, max: 9000, noNaN: true })
const dropList = fc.array(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 6 })

function errors(openMm: number, { valves, loops }: { valves: readonly Valve[]; loops: readonly Loop[] }) {
  const rows = combinationTable(openMm, routing(openMm, valves, loops), fingeringsOf(valves, 'all'))
  return new Map(rows.map((row: Combination) => [row.fingering, row.errorCents]))
}

function expectSame(a: ReadonlyMap<string, number>, b: ReadonlyMap<string, number>): void {
  expect([...a.keys()]).toEqual([...b.keys()])
  for (const [name, cents] of a) expect(Math.abs(cents - b.get(name)!)).toBeLessThan(1e-7)
}

/** Any gates over three valves, any lengths: a system nobody would build must obey the same laws. */
const anySystem = fc.record({
  openMm: fc.double({ min: 2000, max: 9000, noNaN: true }),
  valves: fc.constant(numberedValves([2, 1, 3])),
  loops: fc
    .array(
      fc.record({
        lengthMm: fc.double({ min: 0, max: 100, noNaN: true }),
        pressed: fc.subarray(['1', '2', '3']),
        released: fc.subarray(['1', '2', '3']),
      }),
      { maxLength: 8 },
    )
    .map((loops): readonly Loop[] => loops.map((loop, i) => ({ ...loop, id: `L${i}` }))),
})

describe('combination errors', () => {
  it('do not change when all lengths are scaled alike', () => {
    fc.assert(
      fc.property(anySystem, fc.double({ min: 0.1, max: 10, noNaN: true }), (system, factor) => {
        const loops = system.loops.map((loop) => ({ ...loop, lengthMm: loop.lengthMm * factor }))
        expectSame(errors(system.openMm, system), errors(system.openMm * factor, { ...system, loops }))
      }),
    )
  })

  it('do not change with a loop of zero length, whatever its gate', () => {
    fc.assert(
      fc.property(anySystem, fc.subarray(['1', '2', '3']), (system, pressed) => {
        const loops = [...system.loops, { id: 'none', lengthMm: 0, pressed }]
        expectSame(errors(system.openMm, system), errors(system.openMm, { ...system, loops }))
      }),
    )
  })

  it('do not change with the order of the loops', () => {
    fc.assert(
      fc.property(anySystem, fc.nat(), (system, seed) => {
        const at = system.loops.length === 0 ? 0 : seed % system.loops.length
        const loops = [...system.loops.slice(at), ...system.loops.slice(0, at)].reverse()
        expectSame(errors(system.openMm, system), errors(system.openMm, { ...system, loops }))
      }),
    )
  })

  it('are zero for the open route, whatever lies in it', () => {
    fc.assert(fc.property(anySystem, (system) => Math.abs(errors(system.openMm, system).get('0')!) < 1e-9))
  })

  it('vanish in an independent system by combination, at any length', () => {
    fc.assert(
      fc.property(
        lengthMm,
        fc.array(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 5 }),
        (mm, drops) => {
          for (const cents of errors(mm, independentByCombination(mm, drops)).values()) {
            expect(Math.abs(cents)).toBeLessThan(1e-9)
          }
        },
      ),
    )
  })

  it('vanish for each valve alone in a plain system, and are sharp for any two together', () => {
    fc.assert(
      fc.property(lengthMm, dropList, (mm, drops) => {
        for (const [name, cents] of errors(mm, plain(mm, drops))) {
          if (name.includes('-')) expect(cents).toBeGreaterThan(0)
          else expect(Math.abs(cents)).toBeLessThan(1e-9)
        }
      }),
    )
  })

  it('of a compensating system are the plain errors of the valves before the switching one, with it or without', () => {
    fc.assert(
      fc.property(
        lengthMm,
        fc.array(fc.integer({ min: 1, max: 5 }), { minLength: 2, maxLength: 5 }),
        (mm, drops) => {
          const parts: SystemParts = compensating(mm, drops, drops.length)
          const switching = String(drops.length)
          const before = errors(mm, plain(mm, drops.slice(0, -1)))
          for (const [name, cents] of errors(mm, parts)) {
            const others = name.split('-').filter((id) => id !== switching)
            // With the switching valve down, all tube below it is the block's, on a longer open route.
            expect(Math.abs(cents - before.get(others.join('-') || '0')!)).toBeLessThan(1e-7)
          }
        },
      ),
    )
  })
})
