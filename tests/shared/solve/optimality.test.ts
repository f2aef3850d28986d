import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { LengthProblem } from '#shared/solve/lengthProblem.ts'
import { loadHighs } from '../../../src-main/headless/loadHighs.ts'
import { objectiveOutside } from './errorsOutside.ts'
import { plainOf, plainRow, plainThree, sevenFingerings, thirdAloneLeftOut } from './plainProblem.ts'
import { solved } from './solved.ts'

const programmer = await loadHighs()

const bounded = ['L1', 'L2', 'L3'].map((id) => ({
  id,
  lengthMm: 200,
  freedom: { kind: 'free', lowestMm: 120, highestMm: 400 } as const,
}))

const problems = (objective: LengthProblem['objective']): Readonly<Record<string, LengthProblem>> => ({
  'three valves': plainThree(sevenFingerings, objective),
  'three valves, third alone left out': plainThree(thirdAloneLeftOut, objective),
  'open note free': plainThree(['0', ...thirdAloneLeftOut], objective, { open: { kind: 'free' } }),
  bounded: plainThree(sevenFingerings, objective, { loops: bounded }),
  weighted: plainThree([], objective, {
    rows: sevenFingerings.map((name, at) => ({ ...plainRow(name), weight: [1, 3, 0, 2, 1, 5, 0.5][at]! })),
  }),
  'notes with offsets': plainThree([], objective, {
    rows: sevenFingerings.map((name, at) => ({
      ...plainRow(name),
      offsetCents: [0, -14, 2, 4, 0, 2, -14][at]!,
    })),
  }),
  'five valves': plainOf(5, objective),
})

describe('optimality, seen from outside', () => {
  for (const objective of ['rms', 'largest'] as const) {
    for (const [name, problem] of Object.entries(problems(objective))) {
      it(`no feasible neighbour among 4000 is better: ${objective}, ${name}`, () => {
        const answer = solved(problem, programmer)
        const best = objectiveOutside(problem, answer.lengthsMm, answer.openChangeMm)
        expect(answer.objectiveCents).toBeCloseTo(best, 9)
        expect(betterNeighbours(problem, answer, best)).toBe(0)
      })
    }
  }

  it('counts a better neighbour when there is one', () => {
    const problem = plainThree(sevenFingerings, 'rms')
    const answer = solved(problem, programmer)
    const astray = { ...answer, lengthsMm: { ...answer.lengthsMm, L3: answer.lengthsMm.L3! + 1 } }
    const best = objectiveOutside(problem, astray.lengthsMm, 0)
    expect(betterNeighbours(problem, astray, best)).toBeGreaterThan(0)
  })

  it('has the errors that hold the largest equal in size and on both sides of zero', () => {
    for (const problem of [...Object.values(problems('largest')), plainOf(7, 'largest')]) {
      const answer = solved(problem, programmer)
      const holding = answer.rows.filter((row) => row.holdsLargest)
      const weighted = holding.map((row) => row.weight * Math.abs(row.leftCents))
      expect(Math.max(...weighted) - Math.min(...weighted)).toBeLessThan(1e-4)
      if (answer.heldByBounds.length > 0) continue
      expect(holding.some((row) => row.leftCents > 0)).toBe(true)
      expect(holding.some((row) => row.leftCents < 0)).toBe(true)
    }
  })

  it('is never above the largest error of the least rms, nor its rms below', () => {
    const weight = fc.double({ min: 0.1, max: 10, noNaN: true })
    const weights = fc.array(weight, { minLength: 7, maxLength: 7 })
    fc.assert(
      fc.property(weights, fc.boolean(), (chosen, openFree) => {
        const rows = sevenFingerings.map((name, at) => ({ ...plainRow(name), weight: chosen[at]! }))
        const open = { kind: openFree ? 'free' : 'held' } as const
        const all = openFree ? [...rows, plainRow('0')] : rows
        const rms = solved(plainThree([], 'rms', { rows: all, open }), programmer)
        const largest = solved(plainThree([], 'largest', { rows: all, open }), programmer)
        expect(rms.status).toBe('converged')
        expect(largest.status).toBe('converged')
        expect(largest.largestWeightedCents).toBeLessThanOrEqual(rms.largestWeightedCents + 1e-5)
        expect(rms.rmsCents).toBeLessThanOrEqual(largest.rmsCents + 1e-9)
      }),
      { numRuns: 60 },
    )
  })

  it('converges within the bounds whatever the weights, offsets, reach and bounds', () => {
    const double = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    const row = fc.record({
      weight: fc.oneof(fc.constant(0), double(0.001, 10)),
      offsetCents: double(-50, 50),
      reach: fc.record({ sharpCents: double(0, 40), flatCents: double(0, 20) }),
    })
    const loop = fc.record({
      lengthMm: double(0, 1500),
      lowestMm: double(0, 200),
      highestMm: double(200, 600),
    })
    const all = ['0', ...sevenFingerings]
    const rowsOf = fc.array(row, { minLength: all.length, maxLength: all.length })
    const loopsOf = fc.array(loop, { minLength: 3, maxLength: 3 })
    fc.assert(
      fc.property(rowsOf, loopsOf, fc.constantFrom('rms', 'largest'), (drawn, ends, objective) => {
        const rows = all.map((name, at) => ({ ...plainRow(name), ...drawn[at]! }))
        fc.pre(rows.some((counted) => counted.weight > 0))
        const loops = ends.map(({ lengthMm, ...bounds }, at) => ({
          id: `L${at + 1}`,
          lengthMm,
          freedom: { kind: 'free', ...bounds } as const,
        }))
        const answer = solved(plainThree([], objective, { rows, loops, open: { kind: 'free' } }), programmer)
        expect(answer.status).toBe('converged')
        for (const [at, { lowestMm, highestMm }] of ends.entries()) {
          expect(answer.lengthsMm[`L${at + 1}`]).toBeGreaterThan(lowestMm - 1e-6)
          expect(answer.lengthsMm[`L${at + 1}`]).toBeLessThan(highestMm + 1e-6)
        }
      }),
      { numRuns: 100 },
    )
  })

  it('among sets of one least largest error gives the one of least rms', () => {
    const problem = plainThree(thirdAloneLeftOut, 'largest')
    const answer = solved(problem, programmer)
    // L2 and L3 can be exchanged for each other over a range without touching the largest error.
    const others = [-2, -1, -0.1, 0.1, 1].map((mm) => ({
      L1: answer.lengthsMm.L1!,
      L2: answer.lengthsMm.L2! + mm,
      L3: answer.lengthsMm.L3! - mm,
    }))
    for (const lengthsMm of others) {
      expect(objectiveOutside(problem, lengthsMm, 0)).toBeLessThan(answer.largestCents + 1e-4)
      expect(objectiveOutside({ ...problem, objective: 'rms' }, lengthsMm, 0)).toBeGreaterThan(
        answer.rmsCents,
      )
    }
  })
})

interface Place {
  readonly lengthsMm: Readonly<Record<string, number>>
  readonly openChangeMm: number
}

/** How many of 4000 seeded feasible neighbours, from a micrometre to centimetres away, are better. */
function betterNeighbours(problem: LengthProblem, place: Place, best: number): number {
  const random = seeded(7)
  let better = 0
  for (let count = 0; count < 4000; count++) {
    const spanMm = 10 ** (-3 + 4.5 * random())
    const step = () => spanMm * (2 * random() - 1)
    const lengthsMm = Object.fromEntries(
      problem.loops.map((loop) => {
        const { lowestMm = 0, highestMm = Number.POSITIVE_INFINITY } = loop.freedom as {
          lowestMm?: number
          highestMm?: number
        }
        return [loop.id, Math.min(Math.max(place.lengthsMm[loop.id]! + step(), lowestMm), highestMm)]
      }),
    )
    const openChangeMm = problem.open.kind === 'free' ? place.openChangeMm + step() : 0
    if (objectiveOutside(problem, lengthsMm, openChangeMm) < best - 2e-6) better++
  }
  return better
}

/** Numbers in 0..1, the same in every run (a linear congruence). */
function seeded(seed: number): () => number {
  let state = seed
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
}
