import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { setMainSlide } from '#shared/tuning/mainSlide.ts'
import { airLayout } from '#shared/valves/air/airLayout.ts'
import { airLine } from '#shared/valves/air/airLine.ts'
import { airPath, passagesOpen } from '#shared/valves/air/airPath.ts'
import { valvePlan } from '#shared/valves/air/valvePlan.ts'
import { fingeringsOf } from '#shared/valves/fingerings.ts'
import type { Loop } from '#shared/valves/loop.ts'
import { loopsInRoute, routing } from '#shared/valves/route.ts'
import { numberedValves } from '#shared/valves/systems/parts.ts'
import { systemOf, systems } from '#shared/valves/systems/systems.ts'
import type { Valve } from '#shared/valves/valve.ts'
import { examples } from '#shared/workbook/examples/examples.ts'
import { instrumentOf } from '#shared/workbook/instrumentOf.ts'
import { exampleWorkbook } from '../../../fixtures/exampleFiles.ts'
import { measures } from './measures.ts'

function planOf(id: string) {
  const { valves, loops } = systemOf(id)!.build(4000)
  return { valves, loops, plan: valvePlan(valves, loops) }
}

function passages(id: string, pressed: readonly string[]) {
  const { valves, loops, plan } = planOf(id)
  const down = valves.reduce((bits, valve, i) => (pressed.includes(valve.id) ? bits | (1 << i) : bits), 0)
  expect(loops.length).toBeGreaterThan(0)
  return airPath(plan, down).map(
    ({ valve, loops: through }) => `${valves[valve!]!.id}:${through.join('+') || '-'}`,
  )
}

/** The loops of the path and of the drawn line against those of the route, for every fingering given. */
function expectSameLoops(valves: readonly Valve[], loops: readonly Loop[], downs: readonly number[]): void {
  const system = routing(4000, valves, loops)
  const plan = valvePlan(valves, loops)
  const layout = airLayout(plan, measures)
  for (const down of downs) {
    const route = loopsInRoute(system, down).map(({ id }) => id)
    const path = airPath(plan, down)
    const through = path.flatMap((passage) => passage.loops)
    expect(through.toSorted()).toEqual(route.toSorted())
    const drawn = airLine(layout, path).flatMap(({ loop }) => loop ?? [])
    expect(drawn).toEqual(through)
  }
}

describe('the path of the air', () => {
  it('goes straight through every valve of a plain system, in their order', () => {
    expect(passages('plain-3', [])).toEqual(['1:-', '2:-', '3:-'])
    expect(passages('plain-3', ['1', '3'])).toEqual(['1:L1', '2:-', '3:L3'])
  })

  it('goes through the valves of a compensating system a second time when the switching valve is down', () => {
    expect(passages('compensating-4', ['1', '2'])).toEqual(['1:L1', '2:L2', '3:-', '4:-'])
    expect(passages('compensating-4', ['4'])).toEqual([
      ...['1:-', '2:-', '3:-', '4:L4'],
      ...['1:-', '2:-', '3:-', '4:-'],
    ])
    expect(passages('compensating-3', ['1', '3'])).toEqual(['1:L1', '2:-', '3:L3', '1:C1', '2:-', '3:-'])
  })

  it('leaves a plain fourth valve behind a compensating block out of the second passage', () => {
    expect(passages('compensating-3-plain-4', ['2', '3', '4'])).toEqual([
      ...['1:-', '2:L2', '3:L3', '1:-', '2:C2', '3:-'],
      '4:L4',
    ])
  })

  it('takes one side of a double, and both sets of a compensating double when the change valve is up', () => {
    expect(passages('double', ['1'])).toEqual(['1:long 1', '2:-', '3:-', 'T:long body'])
    expect(passages('double', ['1', 'T'])).toEqual(['1:short 1', '2:-', '3:-', 'T:-'])
    expect(passages('double-compensating', ['1'])).toEqual([
      ...['1:main 1', '2:-', '3:-', 'T:long body'],
      ...['1:extra 1', '2:-', '3:-', 'T:-'],
    ])
    expect(passages('double-compensating', ['1', 'T'])).toEqual(['1:main 1', '2:-', '3:-', 'T:-'])
  })

  it('goes through all tubes of a cut-off system at rest, and through none when the first valve is down', () => {
    expect(passages('cut-off', [])).toEqual([1, 2, 3, 4, 5, 6].map((n) => `${n}:step ${n}`))
    expect(passages('cut-off', ['1'])).toEqual([1, 2, 3, 4, 5, 6].map((n) => `${n}:-`))
    expect(passages('cut-off', ['4']).slice(2, 4)).toEqual(['3:step 3', '4:-'])
  })

  it('has the loop of an ascending valve in it while the valve is up', () => {
    expect(passages('ascending-3', [])).toEqual(['1:-', '2:-', '3:L3'])
    expect(passages('ascending-3', ['3'])).toEqual(['1:-', '2:-', '3:-'])
  })

  it('takes one loop for a combination that has its own', () => {
    expect(passages('independent-combination', ['1', '2', '3']).join(' ')).toBe('1:loop 1-2-3 2:- 3:-')
  })

  it('begins with the loops that no valve switches, and takes two of one gate one after the other', () => {
    const loops = [
      { id: 'A', lengthMm: 9, pressed: ['1'] },
      { id: 'always', lengthMm: 5, pressed: [] },
      { id: 'B', lengthMm: 7, pressed: ['1'] },
    ]
    const plan = valvePlan(numberedValves([2]), loops)
    expect(plan.passes).toBe(1)
    expect(airPath(plan, 1).map(({ loops: through }) => through)).toEqual([['always'], ['A', 'B']])
    expect(airPath(valvePlan([], []), 0)).toEqual([])
  })

  it('opens further passages by the company they ask for, not by their own valve', () => {
    const { plan } = planOf('compensating-4')
    expect(plan.passes).toBe(2)
    expect([0b0111, 0b1000, 0b1001].map((down) => passagesOpen(plan, down))).toEqual([[0], [0, 1], [0, 1]])
  })
})

describe('the loops of the path and of the drawn line are those of the route', () => {
  let designs = 0
  for (const example of examples) {
    const workbook = exampleWorkbook(example)
    for (const design of workbook.designs) {
      designs++
      it(`for every fingering of ${example.id}, ${design.id}`, () => {
        const instrument = instrumentOf(workbook, design)
        expect(setMainSlide(instrument).openMm).toBeGreaterThan(0)
        const fingerings = fingeringsOf(design.valves, instrument.fingerings)
        expect(fingerings.length).toBeGreaterThan(1)
        expectSameLoops(
          design.valves,
          design.loops,
          fingerings.map(({ down }) => down),
        )
      })
    }
  }

  it('and there are examples to try', () => expect(designs).toBeGreaterThan(9))

  it.each(systems)('for every setting of the valves of $id', ({ build }) => {
    const { valves, loops } = build(4000)
    expectSameLoops(valves, loops, [...Array(1 << valves.length).keys()])
  })

  it('for any gates whatever, and for twelve valves', () => {
    const ids = ['1', '2', '3', '4']
    const gates = fc.array(fc.record({ pressed: fc.subarray(ids), released: fc.subarray(ids) }), {
      maxLength: 10,
    })
    fc.assert(
      fc.property(gates, (chosen) => {
        const loops = chosen.map((gate, i) => ({ ...gate, id: `L${i}`, lengthMm: 10 * i }))
        expectSameLoops(numberedValves([2, 1, 3, 5]), loops, [...Array(16).keys()])
      }),
    )
    const twelve = numberedValves([2, 1, 3, 5, 2, 1, 4, 6, 7, 8, 9, 10])
    const loops = twelve.map(({ id }) => ({ id: `L${id}`, lengthMm: 100, pressed: [id] }))
    expectSameLoops(twelve, loops, [0, 1, 0b101010101010, 4095])
  })
})
