import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Loop } from '#shared/valves/loop.ts'
import { bitsOf, loopsInRoute, routeLengthMm, routing } from '#shared/valves/route.ts'
import { numberedValves } from '#shared/valves/systems/parts.ts'
import { systems } from '#shared/valves/systems/systems.ts'

const valves = numberedValves([2, 1, 3])
const loop = (id: string, lengthMm: number, pressed: string[], released: string[] = []): Loop => ({
  id,
  lengthMm,
  pressed,
  released,
})

describe('a route', () => {
  it('with nothing pressed is the open length, whatever loops lie in it', () => {
    for (const { build } of systems) {
      const parts = build(3000)
      expect(routeLengthMm(routing(3000, parts.valves, parts.loops), 0)).toBeCloseTo(3000, 9)
    }
  })

  it('loses a loop whose released valve is pressed, and gains those that are pressed in', () => {
    const system = routing(2000, valves, [
      loop('a', 100, [], ['3']),
      loop('b', 240, ['1']),
      loop('c', 30, ['1', '3']),
    ])
    const down = (...ids: string[]) => bitsOf(system, ids)
    expect(system.bodyMm).toBe(1900)
    expect(routeLengthMm(system, down('3'))).toBe(1900)
    expect(routeLengthMm(system, down('1'))).toBe(2240)
    expect(routeLengthMm(system, down('1', '3'))).toBe(2170)
    expect(loopsInRoute(system, down('1', '3')).map(({ id }) => id)).toEqual(['b', 'c'])
  })

  it('is body and loops, for any gates', () => {
    const ids = fc.subarray(['1', '2', '3'])
    const any = fc.array(
      fc.record({ lengthMm: fc.integer({ min: 0, max: 50 }), pressed: ids, released: ids }),
    )
    fc.assert(
      fc.property(any, ids, (gated, pressed) => {
        const loops = gated.map((each, i) => ({ ...each, id: `l${i}` }))
        const system = routing(10_000, valves, loops)
        const inside = loops.filter(
          (each) =>
            each.pressed.every((id) => pressed.includes(id)) &&
            !each.released.some((id) => pressed.includes(id)),
        )
        const down = bitsOf(system, pressed)
        expect(loopsInRoute(system, down)).toEqual(inside)
        const expectedMm = inside.reduce((sum, { lengthMm }) => sum + lengthMm, system.bodyMm)
        expect(routeLengthMm(system, down)).toBe(expectedMm)
      }),
    )
  })

  it('is the same for valves named in any order, and passes over names that are no valves', () => {
    const system = routing(2000, valves, [loop('a', 100, ['1', '3'])])
    expect(bitsOf(system, ['3', '1'])).toBe(bitsOf(system, ['1', '3']))
    expect(bitsOf(system, ['T'])).toBe(0)
  })
})
