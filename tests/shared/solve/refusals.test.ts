import { describe, expect, it } from 'vitest'
import type { LengthProblem } from '#shared/solve/lengthProblem.ts'
import { solveLengths } from '#shared/solve/solveLengths.ts'
import { loadHighs } from '../../../src-main/headless/loadHighs.ts'
import { freeLoop, plainRow, plainThree, sevenFingerings } from './plainProblem.ts'

const programmer = await loadHighs()
const sound = plainThree(sevenFingerings, 'rms')

function refusals(changes: Partial<LengthProblem>) {
  const answers = (['rms', 'largest'] as const).map((objective) =>
    solveLengths({ ...sound, ...changes, objective }, programmer),
  )
  expect(answers[0]).toEqual(answers[1])
  return answers[0]!.status === 'refused' ? answers[0]!.refusals : answers[0]!.status
}

const held = (id: string) => ({ id, lengthMm: 200, freedom: { kind: 'held' } as const })
const tied = (id: string, to: string, factor = 1) => ({
  id,
  lengthMm: 200,
  freedom: { kind: 'tied', to, factor } as const,
})

describe('what cannot be solved is said plainly', () => {
  it('contradicting bounds of one loop', () => {
    const loops = [
      freeLoop('L1'),
      freeLoop('L2'),
      { ...freeLoop('L3'), freedom: { kind: 'free', lowestMm: 300, highestMm: 200 } as const },
    ]
    expect(refusals({ loops })).toEqual([
      {
        kind: 'boundsContradict',
        path: 'loops[2].freedom.highestMm',
        found: '200',
        expected: 'at least 300',
      },
    ])
  })

  it('bounds that contradict each other by way of a tie', () => {
    const free = { ...freeLoop('L1'), freedom: { kind: 'free', lowestMm: 300 } as const }
    const loops = [
      free,
      freeLoop('L2'),
      { ...tied('L3', 'L1', 0.5), freedom: { ...tied('L3', 'L1', 0.5).freedom, highestMm: 100 } },
    ]
    expect(refusals({ loops })).toMatchObject([
      {
        kind: 'boundsContradict',
        path: 'loops[2].freedom.highestMm',
        found: '100',
        expected: 'at least 150, because of loops[0].freedom.lowestMm',
      },
    ])
  })

  it('a bound that a held loop breaks by way of a tie', () => {
    const loops = [
      held('L1'),
      freeLoop('L2'),
      { ...tied('L3', 'L1'), freedom: { ...tied('L3', 'L1').freedom, highestMm: 100 } },
    ]
    expect(refusals({ loops })).toMatchObject([
      { kind: 'boundsContradict', path: 'loops[2].freedom.highestMm' },
    ])
  })

  it('contradicting ends of the open route', () => {
    const open = { kind: 'free', lowestChangeMm: 2, highestChangeMm: -2 } as const
    expect(refusals({ open })).toMatchObject([{ kind: 'boundsContradict', path: 'open.highestChangeMm' }])
  })

  it('all weights zero, and no rows at all', () => {
    const rows = sevenFingerings.map((name) => ({ ...plainRow(name), weight: 0 }))
    expect(refusals({ rows })).toMatchObject([{ kind: 'allWeightsZero', path: 'rows' }])
    expect(refusals({ rows: [] })).toMatchObject([{ kind: 'allWeightsZero', path: 'rows' }])
  })

  it('ties in a circle, at every loop of it', () => {
    const loops = [tied('L1', 'L2'), tied('L2', 'L1'), freeLoop('L3')]
    expect(refusals({ loops })).toMatchObject([
      { kind: 'tiedInCircle', path: 'loops[0].freedom.to', found: 'L2' },
      { kind: 'tiedInCircle', path: 'loops[1].freedom.to', found: 'L1' },
    ])
  })

  it('a loop tied to itself', () => {
    const loops = [tied('L1', 'L1'), freeLoop('L2'), freeLoop('L3')]
    expect(refusals({ loops })).toMatchObject([{ kind: 'tiedInCircle', path: 'loops[0].freedom.to' }])
  })

  it('unknown loops in a tie and in a route', () => {
    const loops = [tied('L1', 'L9'), freeLoop('L2'), freeLoop('L3')]
    expect(refusals({ loops })).toMatchObject([
      { kind: 'unknownLoop', path: 'loops[0].freedom.to', found: 'L9' },
    ])
    const rows = [{ ...plainRow('1-2'), loops: ['L1', 'L8'] }]
    expect(refusals({ rows })).toMatchObject([{ kind: 'unknownLoop', path: 'rows[0].loops[1]', found: 'L8' }])
  })

  it('nothing free', () => {
    expect(refusals({ loops: ['L1', 'L2', 'L3'].map(held) })).toMatchObject([
      { kind: 'nothingFree', path: 'loops' },
    ])
  })

  it('a name used twice', () => {
    expect(refusals({ rows: [plainRow('1'), plainRow('2'), plainRow('1')] })).toMatchObject([
      { kind: 'repeatedName', path: 'rows[2].name', found: '1' },
    ])
  })

  it('a loop twice in one route', () => {
    const rows = [plainRow('1'), { ...plainRow('2'), loops: ['L2', 'L1', 'L2'] }]
    expect(refusals({ rows })).toMatchObject([
      { kind: 'repeatedName', path: 'rows[1].loops[2]', found: 'L2' },
    ])
  })

  it('numbers that are none, or out of range', () => {
    const row = plainRow('1')
    expect(refusals({ openLengthMm: Number.NaN })).toMatchObject([
      { kind: 'notANumber', path: 'openLengthMm', found: 'NaN' },
    ])
    expect(refusals({ openChangeMm: -2000 })).toMatchObject([{ kind: 'outOfRange', path: 'openChangeMm' }])
    expect(refusals({ openLengthMm: 0 })).toMatchObject([
      { kind: 'outOfRange', path: 'openLengthMm', found: '0' },
    ])
    expect(refusals({ rows: [{ ...row, weight: -1 }] })).toMatchObject([
      { kind: 'outOfRange', path: 'rows[0].weight' },
    ])
    expect(refusals({ rows: [{ ...row, semitones: Number.POSITIVE_INFINITY }] })).toMatchObject([
      { kind: 'notANumber', path: 'rows[0].semitones', found: 'Infinity' },
    ])
    expect(refusals({ loops: [freeLoop('L1', -3), freeLoop('L2'), freeLoop('L3')] })).toMatchObject([
      { kind: 'outOfRange', path: 'loops[0].lengthMm', found: '-3' },
    ])
    expect(refusals({ loops: [tied('L1', 'L2', 0), freeLoop('L2'), freeLoop('L3')] })).toMatchObject([
      { kind: 'outOfRange', path: 'loops[0].freedom.factor', found: '0' },
    ])
  })

  it('a route that vanishes because loops of the open route are longer than it', () => {
    const loops = [{ ...freeLoop('L1', 2500), inOpenRoute: true }]
    const rows = [{ name: 'up', semitones: -2, loops: [] }]
    expect(refusals({ loops, rows })).toMatchObject([{ kind: 'routeVanishes', path: 'rows[0].loops' }])
  })

  it('an answer of the linear programmer that is none', () => {
    const failing = { solve: () => ({ kind: 'failed', reason: 'out of memory' }) as const }
    expect(solveLengths({ ...sound, objective: 'largest' }, failing)).toEqual({
      status: 'programFailed',
      reason: 'out of memory',
    })
  })

  it('a search that runs out of steps, with the best found', () => {
    let cap = 0
    const restless = {
      solve: () =>
        ({ kind: 'optimal', columnValues: [200, 200, 200, cap++], columnPulls: [0, 0, 0, 0] }) as const,
    }
    const answer = solveLengths({ ...sound, objective: 'largest' }, restless)
    expect(answer.status).toBe('stopped')
    expect('rows' in answer && answer.largestCents).toBeCloseTo(22.9912, 3)
  })
})
