import { describe, expect, it } from 'vitest'
import type { LengthProblem, LoopFreedom } from '#shared/solve/lengthProblem.ts'
import { loadHighs } from '../../../src-main/headless/loadHighs.ts'
import { freeLoop, plainThree, thirdAloneLeftOut } from './plainProblem.ts'
import { solved } from './solved.ts'

const programmer = await loadHighs()

function withThird(freedom: LoopFreedom, objective: LengthProblem['objective']): LengthProblem {
  const loops = [freeLoop('L1'), freeLoop('L2'), { id: 'L3', lengthMm: 400, freedom }]
  return plainThree(thirdAloneLeftOut, objective, { loops })
}

describe('bounds', () => {
  for (const objective of ['rms', 'largest'] as const) {
    it(`states the bound that holds the answer and what a millimetre of it is worth: ${objective}`, () => {
      const at = (highestMm: number) => solved(withThird({ kind: 'free', highestMm }, objective), programmer)
      const answer = at(390)
      expect(answer.lengthsMm.L3).toBeCloseTo(390, 5)
      expect(answer.heldByBounds).toHaveLength(1)
      const [held] = answer.heldByBounds
      expect(held).toMatchObject({ loop: 'L3', bound: 'highest', atMm: 390 })
      const slope = (at(389.99).objectiveCents - at(390.01).objectiveCents) / 0.02
      expect(held!.gainCentsPerMm).toBeCloseTo(slope, 3)
      expect(slope).toBeGreaterThan(0.01)
    })

    it(`counts the bound of a tied loop in that loop's own millimetres: ${objective}`, () => {
      const at = (highestMm: number) => {
        const loops = [
          freeLoop('L1'),
          freeLoop('L2'),
          { id: 'L3', lengthMm: 0, freedom: { kind: 'tied', to: 'L1', factor: 1.6, highestMm } as const },
        ]
        return solved(plainThree(thirdAloneLeftOut, objective, { loops }), programmer)
      }
      const answer = at(390)
      expect(answer.heldByBounds).toMatchObject([{ loop: 'L3', bound: 'highest', atMm: 390 }])
      const slope = (at(389.99).objectiveCents - at(390.01).objectiveCents) / 0.02
      expect(answer.heldByBounds[0]!.gainCentsPerMm).toBeCloseTo(slope, 3)
    })
  }

  it('states the end of the open route that holds', () => {
    const open = { kind: 'free', lowestChangeMm: -4, highestChangeMm: 4 } as const
    const answer = solved(plainThree(['0', ...thirdAloneLeftOut], 'largest', { open }), programmer)
    expect(answer.openChangeMm).toBeCloseTo(-4, 5)
    expect(answer.heldByBounds).toMatchObject([{ loop: null, bound: 'lowest', atMm: -4 }])
    expect(answer.heldByBounds[0]!.gainCentsPerMm).toBeGreaterThan(0)
  })

  it('names no bound when none holds', () => {
    const wide = { kind: 'free', lowestMm: 1, highestMm: 4000 } as const
    expect(solved(withThird(wide, 'rms'), programmer).heldByBounds).toEqual([])
    expect(solved(withThird(wide, 'largest'), programmer).heldByBounds).toEqual([])
  })

  it('lets bounds that meet hold a loop like a held one', () => {
    const met = solved(withThird({ kind: 'free', lowestMm: 400, highestMm: 400 }, 'rms'), programmer)
    const held = solved(withThird({ kind: 'held' }, 'rms'), programmer)
    expect(met.lengthsMm.L3).toBeCloseTo(400, 9)
    expect(met.rmsCents).toBeCloseTo(held.rmsCents, 9)
  })

  it('never lets a loop fall below nothing', () => {
    const loops = [freeLoop('L1'), freeLoop('L2'), freeLoop('L3')]
    const rows = [
      { name: 'a', semitones: 2, loops: ['L1'] },
      { name: 'b', semitones: 1, loops: ['L1', 'L2'] },
      { name: 'c', semitones: 3, loops: ['L3'] },
    ]
    const answer = solved(plainThree([], 'rms', { loops, rows }), programmer)
    expect(answer.lengthsMm.L2).toBeCloseTo(0, 9)
    expect(answer.heldByBounds).toMatchObject([{ loop: 'L2', bound: 'lowest', atMm: 0 }])
  })
})
