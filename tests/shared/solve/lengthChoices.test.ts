import { describe, expect, it } from 'vitest'
import type { DesignToSolve } from '#shared/solve/designProblem.ts'
import { chosenProblem, type LengthChoices } from '#shared/solve/lengthChoices.ts'
import type { LengthProblem } from '#shared/solve/lengthProblem.ts'
import { solveLengths } from '#shared/solve/solveLengths.ts'
import { fingeringsOf } from '#shared/valves/fingerings.ts'
import { compensating } from '#shared/valves/systems/compensating.ts'
import { plain } from '#shared/valves/systems/plain.ts'
import { loadHighs } from '../../../src-main/headless/loadHighs.ts'

const programmer = await loadHighs()
const openLengthMm = 2000

const withFingerings = (parts: ReturnType<typeof plain>): DesignToSolve => ({
  openLengthMm,
  ...parts,
  fingerings: fingeringsOf(parts.valves, 'all'),
})
const design = withFingerings(plain(openLengthMm, [2, 1, 3]))

const choices = (more: Partial<LengthChoices> = {}): LengthChoices => ({
  objective: 'rms',
  open: { kind: 'held' },
  freedoms: new Map(),
  weights: new Map(),
  slides: [],
  ...more,
})

function problemOf(more: Partial<LengthChoices>, of = design): LengthProblem {
  const problem = chosenProblem(of, choices(more))
  if ('refusals' in problem) throw new Error(JSON.stringify(problem.refusals))
  return problem
}

describe('chosenProblem', () => {
  it('frees every loop and counts every fingering but the open one when nothing is chosen', () => {
    const { loops, rows } = problemOf({})
    expect(loops.map(({ freedom }) => freedom.kind)).toEqual(['free', 'free', 'free'])
    expect(rows.filter(({ weight }) => weight === 0).map(({ name }) => name)).toEqual(['0'])
    expect(rows.filter(({ weight }) => weight === 1)).toHaveLength(7)
  })

  it('counts the open fingering once the open route is free, by the weight it was given', () => {
    const open = { kind: 'free' } as const
    expect(problemOf({ open }).rows[0]).toMatchObject({ name: '0', weight: 1 })
    expect(problemOf({ open, weights: new Map([['0', 4]]) }).rows[0]).toMatchObject({ weight: 4 })
    expect(problemOf({ weights: new Map([['0', 4]]) }).rows[0]).toMatchObject({ weight: 0 })
  })

  it('is not misled by a valve named like something that every object has', () => {
    const valves = [{ id: 'constructor', semitones: 2 }]
    const loops = [{ id: 'toString', lengthMm: 250, pressed: ['constructor'] }]
    const odd = { openLengthMm, valves, loops, fingerings: fingeringsOf(valves, 'all') }
    const problem = problemOf({}, odd)
    expect(problem.rows[1]).toMatchObject({ name: 'constructor', weight: 1 })
    expect(problem.loops[0]!.freedom).toEqual({ kind: 'free' })
  })

  it('takes the third alone out and the open note free from 53.6 to 11.5 cents', () => {
    const weights = new Map([['3', 0]])
    const answer = solveLengths(
      problemOf({ objective: 'largest', open: { kind: 'free' }, weights }),
      programmer,
    )
    expect(answer).toMatchObject({ status: 'converged' })
    if (answer.status === 'converged') expect(answer.largestCents).toBeCloseTo(11.4887, 3)
  })

  it('asked again from its own answer moves nothing, the detuned open route included', () => {
    const asked = { objective: 'largest', open: { kind: 'free' }, weights: new Map([['3', 0]]) } as const
    const first = solveLengths(problemOf(asked), programmer)
    if (first.status !== 'converged') throw new Error(first.status)
    const loops = design.loops.map((loop) => ({ ...loop, lengthMm: first.lengthsMm[loop.id]! }))
    const taken = { ...design, loops, openChangeMm: first.openChangeMm }
    const again = solveLengths(problemOf(asked, taken), programmer)
    if (again.status !== 'converged') throw new Error(again.status)
    expect(again.openChangeMm).toBeCloseTo(first.openChangeMm, 5)
    for (const { id, lengthMm } of loops) expect(again.lengthsMm[id]).toBeCloseTo(lengthMm, 5)
  })

  it('keeps a held open route where it was set', () => {
    const answer = solveLengths(problemOf({}, { ...design, openChangeMm: -12 }), programmer)
    if (answer.status !== 'converged') throw new Error(answer.status)
    expect(answer.openChangeMm).toBe(-12)
    expect(answer.rows.find(({ name }) => name === '0')!.errorCents).toBeCloseTo(10.42, 2)
  })

  it('ties a compensating loop to its main loop', () => {
    const factor = 2 ** (3 / 12) - 1
    const freedoms = new Map([
      ['C1', { kind: 'tied', to: 'L1', factor } as const],
      ['C2', { kind: 'tied', to: 'L2', factor } as const],
    ])
    const tied = withFingerings(compensating(openLengthMm, [2, 1, 3], 3))
    const answer = solveLengths(problemOf({ freedoms, weights: new Map([['3', 0]]) }, tied), programmer)
    if (answer.status !== 'converged') throw new Error(answer.status)
    expect(answer.lengthsMm.C1! / answer.lengthsMm.L1!).toBeCloseTo(factor, 9)
    expect(answer.rmsCents).toBeCloseTo(3.5443, 2)
  })

  it('counts what a movable slide reaches as reached', () => {
    const slides = [{ id: 'third', loop: 'L3', outMm: 0, travelMm: 40 }]
    const objective = 'largest'
    const without = solveLengths(problemOf({ objective }), programmer)
    const reached = solveLengths(problemOf({ objective, slides }), programmer)
    if (without.status !== 'converged' || reached.status !== 'converged') throw new Error('not solved')
    expect(reached.largestCents).toBeLessThan(without.largestCents / 2)
  })

  it('refuses slides longer than the route they are in', () => {
    const slides = [{ id: 'main', outMm: 0, travelMm: 1500 }]
    const problem = chosenProblem(design, choices({ slides }))
    expect('refusals' in problem && problem.refusals[0]).toEqual({
      kind: 'outOfRange',
      path: 'rows[0].reach',
      found: '3000 mm of slides',
      expected: 'less than 2000 mm',
    })
  })
})
