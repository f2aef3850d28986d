import { describe, expect, it } from 'vitest'
import type { LengthProblem } from '#shared/solve/lengthProblem.ts'
import { loadHighs } from '../../../src-main/headless/loadHighs.ts'
import fixture from '../../fixtures/solver.json' with { type: 'json' }
import { manyValves } from './manyValves.ts'
import {
  exactLoop,
  freeLoop,
  plainOf,
  plainRow,
  plainThree,
  sevenFingerings,
  thirdAloneLeftOut,
} from './plainProblem.ts'
import { solved } from './solved.ts'

const programmer = await loadHighs()
const largestRow = (answer: ReturnType<typeof solved>) =>
  answer.rows.filter((row) => row.holdsLargest).map((row) => row.name)

describe('solveLengths against figures of a separate program', () => {
  const plain = fixture.cases.flatMap((entry) => ('fingerings' in entry ? [entry] : []))
  it('has the six plain cases to compare', () => expect(plain).toHaveLength(6))

  for (const entry of plain) {
    it(`finds what the other program found: ${entry.name}, ${entry.objective}`, () => {
      const objective = entry.objective === 'rms' ? 'rms' : 'largest'
      const open = { kind: entry.openFree ? 'free' : 'held' } as const
      const answer = solved(plainThree(entry.fingerings!, objective, { open }), programmer)
      expect(answer.status).toBe('converged')
      expect(Math.abs(answer.largestCents - entry.largestCents!)).toBeLessThan(1e-3)
      if (objective === 'largest') return
      expect(Math.abs(answer.rmsCents - entry.rmsCents)).toBeLessThan(1e-3)
      expect(Math.abs(answer.openChangeMm - (entry.openChangeMm ?? 0))).toBeLessThan(1e-2)
      for (const [id, lengthMm] of Object.entries(entry.lengthsMm)) {
        expect(Math.abs(answer.lengthsMm[id]! - lengthMm)).toBeLessThan(1e-2)
      }
      for (const row of answer.rows) {
        const expected = (entry.errorsCents as Record<string, number>)[row.name]!
        expect(Math.abs(row.errorCents - expected)).toBeLessThan(1e-3)
      }
    })
  }

  it('finds the compensating design whose loops are tied to the main loops', () => {
    const entry = fixture.cases.find((other) => other.name.startsWith('compensating three'))!
    const answer = solved(compensatingThree('rms'), programmer)
    for (const [id, lengthMm] of Object.entries(entry.lengthsMm)) {
      expect(Math.abs(answer.lengthsMm[id]! - lengthMm)).toBeLessThan(1e-2)
    }
    expect(Math.abs(answer.rmsCents - entry.rmsCents)).toBeLessThan(1e-3)
    expect(answer.lengthsMm.C1! / answer.lengthsMm.L1!).toBeCloseTo(2 ** (3 / 12) - 1, 12)
  })

  it('gives the errors of a scheme row for row when nothing but a loop in no route is free', () => {
    for (const scheme of fixture.schemes) {
      const held = scheme.loops.map((loop) => ({
        id: loop.id,
        lengthMm: loop.lengthMm,
        freedom: { kind: 'held' } as const,
        inOpenRoute: loop.pressed.length === 0,
      }))
      const rows = scheme.expected.map((row) => ({
        name: row.fingering,
        semitones: row.semitones,
        loops: row.loops,
      }))
      const problem: LengthProblem = {
        openLengthMm: scheme.openLengthMm,
        open: { kind: 'held' },
        loops: [...held, freeLoop('apart', 77)],
        rows,
        objective: 'rms',
      }
      const answer = solved(problem, programmer)
      expect(answer.lengthsMm.apart).toBeCloseTo(77, 9)
      expect(answer.undetermined).toEqual(['apart'])
      for (const [at, row] of answer.rows.entries()) {
        expect(Math.abs(row.errorCents - scheme.expected[at]!.errorCents)).toBeLessThan(1e-4)
      }
    }
  })

  it('finds the cut-off tubes again, which lie in the open route and leave it', () => {
    const scheme = fixture.schemes.find((other) => other.name.startsWith('cut-off'))!
    const problem: LengthProblem = {
      openLengthMm: scheme.openLengthMm,
      open: { kind: 'held' },
      loops: scheme.loops.map((loop) => ({ ...freeLoop(loop.id, 50), inOpenRoute: true })),
      rows: scheme.expected.map((row) => ({
        name: row.fingering,
        semitones: row.semitones,
        loops: row.loops,
      })),
      objective: 'rms',
    }
    const answer = solved(problem, programmer)
    for (const loop of scheme.loops) expect(answer.lengthsMm[loop.id]).toBeCloseTo(loop.lengthMm, 5)
  })
})

describe('solveLengths', () => {
  it('takes a three-valve plain design from 53.6 to 11.5 cents when the open note is free and 3 left out', () => {
    const free = { kind: 'free' } as const
    const held = plainThree(sevenFingerings, 'largest').loops.map((loop, at) => ({
      ...loop,
      lengthMm: exactLoop(2000, [2, 1, 3][at]!),
    }))
    const apart = {
      loops: [...held.map((loop) => ({ ...loop, freedom: { kind: 'held' } as const })), freeLoop('apart')],
    }
    expect(solved(plainThree(sevenFingerings, 'largest', apart), programmer).largestCents).toBeCloseTo(
      53.5587,
      3,
    )
    const problem = plainThree(['0', ...thirdAloneLeftOut], 'largest', { open: free, loops: held })
    expect(solved(problem, programmer).largestCents).toBeCloseTo(11.4887, 3)
  })

  it('does better with compensating loops than without, by the factor it states', () => {
    const plain = solved(plainThree(thirdAloneLeftOut, 'largest'), programmer)
    const compensating = solved(compensatingThree('largest'), programmer)
    expect(plain.largestCents).toBeCloseTo(14.4989, 3)
    expect(plain.largestCents / compensating.largestCents).toBeGreaterThan(3)
  })

  it('betters the published compromise of 1/8, 1/15 and 1/5 of the open length in both objectives', () => {
    const published = plainThree(thirdAloneLeftOut, 'largest', {
      loops: [
        ...[1 / 8, 1 / 15, 1 / 5].map((share, at) => ({
          id: `L${at + 1}`,
          lengthMm: 2000 * share,
          freedom: { kind: 'held' } as const,
        })),
        freeLoop('apart'),
      ],
    })
    const asPublished = solved(published, programmer)
    const publishedDrops = { '1': 204, '2': 112, '1-2': 304, '1-3': 487, '2-3': 409, '1-2-3': 572 }
    for (const [name, drop] of Object.entries(publishedDrops)) {
      const row = asPublished.rows.find((other) => other.name === name)!
      expect(Math.abs(100 * plainRow(name).semitones - row.errorCents - drop)).toBeLessThan(0.6)
    }
    // 1200 log2(2^(semitones / 12) / (1 + shares)) of each fingering.
    expect(asPublished.largestCents).toBeCloseTo(27.8236, 3)
    expect(asPublished.rmsCents).toBeCloseTo(14.0795, 3)
    const sharpest = asPublished.rows.toSorted((a, b) => b.errorCents - a.errorCents)[0]!
    expect(sharpest).toMatchObject({ name: '1-2-3', errorCents: asPublished.largestCents })
    const least = solved(plainThree(thirdAloneLeftOut, 'largest'), programmer)
    expect(least.largestCents).toBeCloseTo(14.4989, 3)
    expect(solved(plainThree(thirdAloneLeftOut, 'rms'), programmer).rmsCents).toBeCloseTo(10.5328, 3)
  })

  it('makes independent loops, one a fingering, exact', () => {
    const rows = sevenFingerings.map((name) => ({ ...plainRow(name), loops: [`C${name}`] }))
    for (const objective of ['rms', 'largest'] as const) {
      const loops = rows.map((row) => freeLoop(row.loops[0]!, 0))
      const answer = solved(
        { openLengthMm: 2000, open: { kind: 'held' }, loops, rows, objective },
        programmer,
      )
      expect(answer.status).toBe('converged')
      expect(answer.largestCents).toBeLessThan(1e-5)
    }
  })

  it('leaves a row of weight 0 out, and still states its error', () => {
    const rows = sevenFingerings.map((name) => ({ ...plainRow(name), weight: name === '3' ? 0 : 1 }))
    const answer = solved(plainThree([], 'rms', { rows }), programmer)
    const without = solved(plainThree(thirdAloneLeftOut, 'rms'), programmer)
    expect(answer.rmsCents).toBeCloseTo(without.rmsCents, 9)
    expect(answer.rows.find((row) => row.name === '3')!.errorCents).toBeCloseTo(
      1200 * Math.log2((2000 * 2 ** 0.25) / (2000 + answer.lengthsMm.L3!)),
      9,
    )
  })

  it('counts a row of weight 2 as two rows in the mean square', () => {
    const heavy = [{ ...plainRow('1'), weight: 2 }, plainRow('2'), plainRow('1-2'), plainRow('1-2-3')]
    const twice = [{ ...plainRow('1'), name: 'again' }, ...heavy.map((row) => ({ ...row, weight: 1 }))]
    const one = solved(plainThree([], 'rms', { rows: heavy }), programmer)
    const two = solved(plainThree([], 'rms', { rows: twice }), programmer)
    expect(one.rmsCents).toBeCloseTo(two.rmsCents, 9)
    expect(one.lengthsMm.L1).toBeCloseTo(two.lengthsMm.L1!, 7)
  })

  it('halves a row of weight 2 against the others in the largest error', () => {
    const rows = thirdAloneLeftOut.map((name) => ({ ...plainRow(name), weight: name === '1-2-3' ? 2 : 1 }))
    const answer = solved(plainThree([], 'largest', { rows }), programmer)
    const leftOf = (name: string) => Math.abs(answer.rows.find((row) => row.name === name)!.leftCents)
    expect(largestRow(answer)).toContain('1-2-3')
    expect(2 * leftOf('1-2-3')).toBeCloseTo(leftOf('1'), 4)
  })

  it('suits a note whose harmonic is off by lengthening its route', () => {
    const rows = [{ ...plainRow('1'), offsetCents: 10 }]
    const answer = solved(plainThree([], 'rms', { rows, loops: [freeLoop('L1')] }), programmer)
    expect(answer.lengthsMm.L1).toBeCloseTo(2000 * 2 ** (2 / 12 + 10 / 1200) - 2000, 6)
    expect(answer.rows[0]!.errorCents).toBeCloseTo(0, 9)
  })

  it('counts a fingering that movable slides can reach as reached', () => {
    const reach = { sharpCents: 30, flatCents: 0 }
    const rows = thirdAloneLeftOut.map((name) =>
      name === '1-2-3' ? { ...plainRow(name), reach } : plainRow(name),
    )
    const plain = solved(plainThree(thirdAloneLeftOut, 'largest'), programmer)
    const reached = solved(plainThree([], 'largest', { rows }), programmer)
    const last = reached.rows.find((row) => row.name === '1-2-3')!
    expect(reached.largestCents).toBeLessThan(plain.largestCents / 2)
    expect(last.errorCents).toBeGreaterThan(plain.largestCents)
    expect(last.leftCents).toBeLessThan(last.errorCents - 25)
  })

  it('leaves loops that the rows do not tell apart nearest to where they are, and names them', () => {
    const rows = [{ name: 'both', semitones: 3, loops: ['L1', 'L2'] }, plainRow('3')]
    const loops = [freeLoop('L1', 100), freeLoop('L2', 300), freeLoop('L3')]
    const answer = solved(plainThree([], 'rms', { rows, loops }), programmer)
    const whole = exactLoop(2000, 3)
    expect(answer.undetermined).toEqual(['L1', 'L2'])
    expect(answer.lengthsMm.L1).toBeCloseTo(100 + (whole - 400) / 2, 6)
    expect(answer.lengthsMm.L2).toBeCloseTo(300 + (whole - 400) / 2, 6)
  })

  // 101 · 0.7 is 70.69999999999999, and that over 0.7 is less than 101.
  it('takes bounds that meet in one length, though a tie misses it by a rounding', () => {
    const loops = [
      { ...freeLoop('L1'), freedom: { kind: 'free', lowestMm: 101 } as const },
      freeLoop('L2'),
      { ...freeLoop('L3'), freedom: { kind: 'tied', to: 'L1', factor: 0.7, highestMm: 101 * 0.7 } as const },
    ]
    const answer = solved(plainThree(sevenFingerings, 'rms', { loops }), programmer)
    expect(answer.lengthsMm.L1).toBeCloseTo(101, 9)
  })

  it('leaves a loop as it is that only a fingering of no weight would need', () => {
    const problem = plainThree(sevenFingerings, 'rms')
    const rows = [...problem.rows, { name: 'B', semitones: 4, loops: ['B'], weight: 0 }]
    const loops = [...problem.loops, freeLoop('B', 321)]
    const answer = solved({ ...problem, rows, loops }, programmer)
    expect(answer.undetermined).toEqual(['B'])
    expect(answer.lengthsMm.B).toBe(321)
  })

  it('keeps equal loops equal', () => {
    const loops = [freeLoop('L1'), freeLoop('L2'), tied('L3', 'L1', 1)]
    const answer = solved(plainThree(thirdAloneLeftOut, 'rms', { loops }), programmer)
    expect(answer.lengthsMm.L3).toBe(answer.lengthsMm.L1)
  })

  it('follows a tie to a tied loop, and one to a held loop', () => {
    const loops = [
      { ...freeLoop('L1', 250), freedom: { kind: 'held' } as const },
      tied('L2', 'L3', 0.5),
      tied('L3', 'L1', 1.5),
    ]
    const answer = solved(
      plainThree(thirdAloneLeftOut, 'rms', { loops: [...loops, freeLoop('apart')] }),
      programmer,
    )
    expect(answer.lengthsMm).toMatchObject({ L1: 250, L2: 187.5, L3: 375 })
  })

  for (const objective of ['rms', 'largest'] as const) {
    it(`moves nothing when a solved design is solved again: ${objective}`, () => {
      for (const problem of [
        plainThree(['0', ...thirdAloneLeftOut], objective, { open: { kind: 'free' } }),
        compensatingThree(objective),
        plainOf(5, objective),
      ]) {
        const first = solved(problem, programmer)
        const again = solved(
          {
            ...problem,
            openChangeMm: first.openChangeMm,
            loops: problem.loops.map((loop) => ({ ...loop, lengthMm: first.lengthsMm[loop.id]! })),
          },
          programmer,
        )
        for (const [id, lengthMm] of Object.entries(first.lengthsMm)) {
          expect(Math.abs(again.lengthsMm[id]! - lengthMm)).toBeLessThan(1e-5)
        }
        expect(Math.abs(again.openChangeMm - first.openChangeMm)).toBeLessThan(1e-5)
      }
    })

    it(`gives one answer wherever it starts: ${objective}`, () => {
      const startingAt = (lengthMm: number) =>
        plainThree(thirdAloneLeftOut, objective, {
          loops: ['L1', 'L2', 'L3'].map((id) => freeLoop(id, lengthMm)),
        })
      const near = solved(startingAt(200), programmer)
      for (const lengthMm of [0, 20_000]) {
        const far = solved(startingAt(lengthMm), programmer)
        for (const id of ['L1', 'L2', 'L3']) expect(far.lengthsMm[id]).toBeCloseTo(near.lengthsMm[id]!, 4)
      }
    })
  }

  it('solves twelve valves with two hundred loops', () => {
    const problem = manyValves(12, 200, 'rms')
    expect(problem.rows).toHaveLength(4095)
    expect(problem.loops).toHaveLength(200)
    const answer = solved({ ...problem, objective: 'rms' }, programmer)
    expect(answer.status).toBe('converged')
    expect(Object.values(answer.lengthsMm).every((lengthMm) => lengthMm >= -1e-6)).toBe(true)
    expect(answer.rows.every((row) => Number.isFinite(row.errorCents))).toBe(true)
    const largest = solved({ ...problem, objective: 'largest' }, programmer)
    expect(largest.status).toBe('converged')
    expect(largest.largestCents).toBeLessThan(answer.largestCents)
  }, 120_000)
})

function tied(id: string, to: string, factor: number) {
  return { id, lengthMm: 0, freedom: { kind: 'tied', to, factor } as const }
}

/** Loops C1 and C2 behind the third valve, in proportion to the main loops; the third valve alone left out. */
function compensatingThree(objective: LengthProblem['objective']): LengthProblem {
  const factor = 2 ** (3 / 12) - 1
  const rows = thirdAloneLeftOut.map((name) => {
    const row = plainRow(name)
    const behind = name.includes('3')
      ? row.loops.filter((id) => id !== 'L3').map((id) => id.replace('L', 'C'))
      : []
    return { ...row, loops: [...row.loops, ...behind] }
  })
  const loops = [
    freeLoop('L1'),
    freeLoop('L2'),
    freeLoop('L3'),
    tied('C1', 'L1', factor),
    tied('C2', 'L2', factor),
  ]
  return plainThree([], objective, { rows, loops })
}
