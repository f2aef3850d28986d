import { describe, expect, it } from 'vitest'
import type { LengthSolution } from '#shared/solve/lengthAnswer.ts'
import { chosenProblem, type LengthChoices } from '#shared/solve/lengthChoices.ts'
import type { LengthProblem } from '#shared/solve/lengthProblem.ts'
import { solveLengths } from '#shared/solve/solveLengths.ts'
import { solveSounding, soundedNow } from '#shared/solve/solveSounding.ts'
import type { Sounding } from '#shared/solve/sounding.ts'
import { tuningTables } from '#shared/tuning/tables.ts'
import type { Bore } from '#shared/workbook/bore.ts'
import { boreInput } from '#shared/workbook/boreInput.ts'
import { boreSounding } from '#shared/workbook/boreSounding.ts'
import { examples } from '#shared/workbook/examples/examples.ts'
import { instrumentOf } from '#shared/workbook/instrumentOf.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { loadHighs } from '../../../src-main/headless/loadHighs.ts'
import { boreWorkbook } from '../../fixtures/boreWorkbook.ts'
import { exampleWorkbook } from '../../fixtures/exampleFiles.ts'
import { workbookWith } from '../../fixtures/workbooks.ts'
import { demand } from '../bore/bores.ts'
import { freeLoop, plainThree } from '../solve/plainProblem.ts'

const programmer = await loadHighs()
const plainly: LengthChoices = {
  objective: 'rms',
  open: { kind: 'held' },
  freedoms: new Map(),
  weights: new Map(),
  slides: [],
}

function asked(workbook: Workbook, choices: Partial<LengthChoices> = {}, at = 0) {
  const design = workbook.designs[at]!
  const { mainSlide, fingerings } = tuningTables(instrumentOf(workbook, design))
  const problem = chosenProblem(
    {
      openLengthMm: mainSlide.inTuneOpenMm,
      openChangeMm: mainSlide.openMm - mainSlide.inTuneOpenMm,
      valves: design.valves,
      loops: design.loops,
      fingerings,
    },
    { ...plainly, ...choices },
  ) as LengthProblem
  const sounding = demand(boreSounding(boreInput(workbook, design)!, problem))
  const solve = () => solveSounding(problem, sounding, programmer) as LengthSolution
  return { problem, sounding, solve, now: soundedNow(problem, sounding)! }
}

const bass = exampleWorkbook(examples[0]!)
const free = { kind: 'free' } as const

describe('lengths that aim at the resonances', () => {
  it.each<[string, Workbook, Partial<LengthChoices>]>([
    ['three valves, least rms', boreWorkbook(), {}],
    ['three valves, least largest', boreWorkbook(), { objective: 'largest' }],
    ['four valves, least rms, open note free', bass, { open: free }],
    ['four valves, least largest, open note free', bass, { open: free, objective: 'largest' }],
  ])('are found, and better than those that stand: %s', (_, workbook, choices) => {
    const { solve, now } = asked(workbook, choices)
    const found = solve()
    expect(found.status).toBe('converged')
    const reached = (each: typeof now) =>
      choices.objective === 'largest' ? each.largestCents : each.rmsCents
    expect(reached(found)).toBeLessThan(0.75 * reached(now))
    expect(found.objectiveCents).toBeCloseTo(reached(found), 9)
  })

  it.each(['rms', 'largest'] as const)(
    'cannot be bettered by a small change of any loop: %s',
    (objective) => {
      const { problem, sounding, solve } = asked(boreWorkbook(), { objective })
      const found = solve()
      for (const { id } of problem.loops) {
        for (const byMm of [-1, 1]) {
          const loops = problem.loops.map((loop) => {
            const lengthMm = found.lengthsMm[loop.id]! + (loop.id === id ? byMm : 0)
            return { ...loop, lengthMm }
          })
          const near = soundedNow({ ...problem, loops }, sounding)!
          const reached = objective === 'rms' ? near.rmsCents : near.largestCents
          expect(reached).toBeGreaterThan(found.objectiveCents - 0.01)
        }
      }
    },
  )

  it('are those of the length model in a wide cylinder, where both models say the same', () => {
    const lengthMm = 3500
    const bore: Bore = {
      mouth: 'open',
      sections: [
        { kind: 'cylinder', lengthMm: 1000, diameterMm: 120 },
        { kind: 'valves', diameterMm: 120 },
        { kind: 'cylinder', lengthMm: lengthMm - 1000, diameterMm: 120 },
      ],
    }
    const speed = instrumentOf(bass, bass.designs[0]!).speedOfSoundMps
    const workbook = workbookWith('plain-3', { bore }, { fundamentalHz: (1000 * speed) / (2 * lengthMm) })
    for (const objective of ['rms', 'largest'] as const) {
      const { problem, solve } = asked(workbook, { objective, open: free })
      const [bored, long] = [solve(), solveLengths(problem, programmer) as LengthSolution]
      expect(bored.status).toBe('converged')
      for (const [id, mm] of Object.entries(long.lengthsMm))
        expect(Math.abs(bored.lengthsMm[id]! - mm)).toBeLessThan(1)
      expect(Math.abs(bored.openChangeMm - long.openChangeMm)).toBeLessThan(1)
      expect(Math.abs(bored.objectiveCents - long.objectiveCents)).toBeLessThan(0.2)
      for (const [i, { name, errorCents }] of long.rows.entries()) {
        expect(bored.rows[i]!.name).toBe(name)
        expect(Math.abs(bored.rows[i]!.errorCents - errorCents)).toBeLessThan(0.5)
      }
    }
  })

  it('have every fingering near its target when each has a loop of its own', () => {
    const found = asked(bass, {}, 3).solve()
    expect(found.rows).toHaveLength(16)
    for (const { errorCents } of found.rows) expect(Math.abs(errorCents)).toBeLessThan(2)
  })

  it('keep within their bounds, and say which holds and what a millimetre of it is worth', () => {
    const freedoms = new Map([['L3', { kind: 'free' as const, highestMm: 270 }]])
    const { problem, sounding, solve } = asked(boreWorkbook(), { freedoms })
    const found = solve()
    expect(found.status).toBe('converged')
    expect(found.lengthsMm.L3).toBeCloseTo(270, 6)
    const [bound] = found.heldByBounds
    expect(found.heldByBounds).toHaveLength(1)
    expect(bound).toMatchObject({ loop: 'L3', bound: 'highest', atMm: 270 })
    const wider = {
      ...problem,
      loops: problem.loops.map((loop) =>
        loop.id === 'L3' ? { ...loop, freedom: { kind: 'free' as const, highestMm: 271 } } : loop,
      ),
    }
    const gained = found.rmsCents - (solveSounding(wider, sounding, null) as LengthSolution).rmsCents
    expect(gained / bound!.gainCentsPerMm).toBeGreaterThan(0.9)
    expect(gained / bound!.gainCentsPerMm).toBeLessThan(1.1)
  })

  it('have each fingering’s modes, whose weighted mean is its error, and the largest of all among them', () => {
    const workbook = boreWorkbook()
    const [design] = workbook.designs
    const targets = [{ mode: 2 }, { mode: 3, weight: 3 }]
    const weighted = { ...workbook, designs: [{ ...design!, bore: { ...design!.bore!, targets } }] }
    const found = asked(weighted).solve()
    for (const { notes, errorCents } of found.rows) {
      expect(notes!.map(({ name, weight }) => [name, weight])).toEqual([
        ['mode 2', 1],
        ['mode 3', 3],
      ])
      expect(errorCents).toBeCloseTo((notes![0]!.leftCents + 3 * notes![1]!.leftCents) / 4, 9)
    }
    const all = found.rows.flatMap(({ notes, weight }) => (weight > 0 ? notes! : []))
    const sum = (values: readonly number[]) => values.reduce((left, value) => left + value, 0)
    const squares = sum(all.map(({ weight, leftCents }) => weight * leftCents ** 2))
    expect(found.rmsCents).toBeCloseTo(Math.sqrt(squares / sum(all.map(({ weight }) => weight))), 9)
    const largest = Math.max(...all.map(({ leftCents }) => Math.abs(leftCents)))
    expect(found.largestCents).toBeCloseTo(largest, 9)
  })

  it('leave held loops alone, and keep tied ones in their proportion', () => {
    const freedoms = new Map([
      ['L1', { kind: 'held' as const }],
      ['L2', { kind: 'tied' as const, to: 'L3', factor: 0.3 }],
    ])
    const found = asked(boreWorkbook(), { freedoms }).solve()
    expect(found.lengthsMm.L1).toBe(169.5)
    expect(found.lengthsMm.L2! / found.lengthsMm.L3!).toBeCloseTo(0.3, 12)
  })

  it('follow the weights of modes: mode 4 alone comes nearer than among others', () => {
    const workbook = boreWorkbook()
    const [design] = workbook.designs
    const targets = [{ mode: 4 }, { mode: 2, weight: 0 }]
    const alone = { ...workbook, designs: [{ ...design!, bore: { ...design!.bore!, targets } }] }
    expect(asked(alone).solve().rmsCents).toBeLessThan(0.6 * asked(workbook).solve().rmsCents)
  })

  it('are found from a loop of its own bore that is hardly there', () => {
    const workbook = boreWorkbook()
    const [design] = workbook.designs
    const loops = design!.loops.map((loop) =>
      loop.id === 'L2' ? { ...loop, lengthMm: 1, diameterMm: 11.9 } : loop,
    )
    const found = asked({ ...workbook, designs: [{ ...design!, loops }] }).solve()
    expect(found.status).toBe('converged')
    expect(Math.abs(found.lengthsMm.L2! - asked(workbook).solve().lengthsMm.L2!)).toBeLessThan(10)
  })

  it('count each mode of a fingering from the cents that it is to be off', () => {
    const { problem } = asked(boreWorkbook())
    const rows = problem.rows.map((row) => (row.name === '1-2' ? { ...row, offsetCents: 5 } : row))
    const notesOf = (each: LengthProblem, name: string) => {
      const workbook = boreWorkbook()
      const sounding = demand(boreSounding(boreInput(workbook, workbook.designs[0]!)!, each))
      return soundedNow(each, sounding)!.rows.find((row) => row.name === name)!.notes!
    }
    for (const [name, byCents] of Object.entries({ '1-2': 5, '1-3': 0 }))
      for (const [i, { leftCents }] of notesOf({ ...problem, rows }, name).entries())
        expect(leftCents - notesOf(problem, name)[i]!.leftCents).toBeCloseTo(byCents, 9)
  })

  it('follow the weights of fingerings: one left out has no part', () => {
    const weights = new Map([['1-2-3', 0]])
    const { rows, rmsCents } = asked(boreWorkbook(), { weights }).solve()
    expect(rows.find(({ name }) => name === '1-2-3')!.weight).toBe(0)
    expect(rmsCents).toBeLessThan(asked(boreWorkbook()).solve().rmsCents)
  })

  it('move nothing when asked again from where they end', () => {
    const workbook = boreWorkbook()
    const { lengthsMm } = asked(workbook).solve()
    const [design] = workbook.designs
    const loops = design!.loops.map((loop) => ({ ...loop, lengthMm: lengthsMm[loop.id]! }))
    const again = asked({ ...workbook, designs: [{ ...design!, loops }] }).solve()
    for (const [id, mm] of Object.entries(lengthsMm)) expect(again.lengthsMm[id]!).toBeCloseTo(mm, 9)
  })

  it('keep an ascending valve’s open route as long as it was', () => {
    const workbook = workbookWith(
      'ascending-3',
      { bore: bass.designs[0]!.bore! },
      bass.designs[0]!.instrument,
    )
    const { solve, now } = asked(workbook)
    const found = solve()
    expect(found.status).toBe('converged')
    expect(found.rmsCents).toBeLessThan(now.rmsCents)
    expect(found.rows.find(({ name }) => name === '0')).toMatchObject({ errorCents: expect.closeTo(0, 1) })
  })

  it('are the same from loops of a bore of their own as from loops of the valves’, when the bores are equal', () => {
    const workbook = boreWorkbook()
    const [design] = workbook.designs
    const wider = (diameterMm: number) => {
      const loops = design!.loops.map((loop) => ({ ...loop, diameterMm }))
      return asked({ ...workbook, designs: [{ ...design!, loops }] }).solve()
    }
    const plain = asked(workbook).solve()
    expect(wider(11.66).lengthsMm).toEqual(plain.lengthsMm)
    expect(wider(11.9).status).toBe('converged')
    for (const [id, mm] of Object.entries(wider(11.9).lengthsMm))
      expect(Math.abs(mm - plain.lengthsMm[id]!)).toBeLessThan(10)
  })
})

describe('another model of the errors', () => {
  // A cent flatter for each millimetre, and at zero at 200 mm.
  const problem = plainThree(['1'], 'rms', { loops: [freeLoop('L1', 210)] })
  const answerWith = (centsPerMm: number) => {
    const sounding: Sounding = ({ lengthsMm }) => {
      const note = { row: 0, name: 'mode 2', weight: 1, cents: 200 - lengthsMm.L1! }
      return { notes: [{ ...note, centsPerMm: new Map([['L1', centsPerMm]]) }] }
    }
    return solveSounding(problem, sounding, null) as LengthSolution
  }

  it('is followed to its end', () => {
    expect(answerWith(-1).status).toBe('converged')
    expect(answerWith(-1).lengthsMm.L1).toBeCloseTo(200, 2)
  })

  it('whose slopes lead astray is followed no farther, and the answer says that it stopped', () => {
    expect(answerWith(1)).toMatchObject({ status: 'stopped', lengthsMm: { L1: 210 } })
  })
})

describe('a bore that cannot be aimed at', () => {
  const problem = asked(boreWorkbook()).problem
  const refusalOf = (more: Partial<Workbook>, bore: Partial<Bore> = {}) => {
    const workbook = { ...boreWorkbook(), ...more }
    const design = workbook.designs[0]!
    return boreSounding(boreInput(workbook, { ...design, bore: { ...design.bore!, ...bore } })!, problem)
  }

  it('is refused with the value at fault', () => {
    const { air } = boreWorkbook()
    expect(refusalOf({ air: { ...air, temperatureC: 70 } })).toMatchObject({
      ok: false,
      refusal: { path: 'temperatureC', found: '70' },
    })
    expect(
      refusalOf(
        {},
        {
          sections: [
            { kind: 'valves', diameterMm: 300 },
            { kind: 'cylinder', lengthMm: 300, diameterMm: 300 },
          ],
          targets: [{ mode: 16 }],
        },
      ),
    ).toMatchObject({
      ok: false,
      refusal: { path: 'targets' },
    })
  })

  it('says so when the loops are too long for it', () => {
    const long = { ...problem, loops: problem.loops.map((loop) => ({ ...loop, lengthMm: 20_000 })) }
    const workbook = boreWorkbook()
    const sounding = demand(boreSounding(boreInput(workbook, workbook.designs[0]!)!, long))
    expect(solveSounding(long, sounding, null)).toMatchObject({
      status: 'refused',
      refusals: [{ kind: 'notSounded', found: '20000 mm of loops' }],
    })
    expect(soundedNow(long, sounding)).toBeNull()
  })
})
