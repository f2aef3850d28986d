import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { slideMovements, slideReach, targetLength } from '#shared/solve/slideMovement.ts'
import { loadHighs } from '../../../src-main/headless/loadHighs.ts'
import { plainRow, plainThree, sevenFingerings } from './plainProblem.ts'
import { solved } from './solved.ts'

const third = { id: 'third', loop: 'L3', outMm: 0, travelMm: 10 }
const first = { id: 'first', loop: 'L1', outMm: 5, travelMm: 20 }
const main = { id: 'main', outMm: 3, travelMm: 8 }
const route = (routeLengthMm: number, targetLengthMm: number, loops = ['L1', 'L3']) => ({
  name: '1-3',
  loops,
  routeLengthMm,
  targetLengthMm,
})

describe('slideMovements', () => {
  it('moves a slide half the tube that is wanting, and leaves nothing', () => {
    const [moved] = slideMovements([route(2600, 2612)], [third])
    expect(moved).toMatchObject({ neededOutMm: 6, moves: [{ slide: 'third', outMm: 6 }], leftCents: 0 })
    expect(moved!.errorCents).toBeCloseTo(1200 * Math.log2(2612 / 2600), 12)
  })

  it('states what is left where travel runs out', () => {
    const [moved] = slideMovements([route(2600, 2650)], [third])
    expect(moved).toMatchObject({ neededOutMm: 25, moves: [{ slide: 'third', outMm: 10 }] })
    expect(moved!.leftCents).toBeCloseTo(1200 * Math.log2(2650 / 2620), 12)
  })

  it('goes to the next slide when the one before is at its end', () => {
    const [moved] = slideMovements([route(2600, 2650)], [third, first])
    expect(moved).toMatchObject({
      moves: [
        { slide: 'third', outMm: 10 },
        { slide: 'first', outMm: 15 },
      ],
      leftCents: 0,
    })
  })

  it('pushes a flat fingering in no farther than its slides stand out', () => {
    const [moved] = slideMovements([route(2640, 2620)], [third, first, main])
    expect(moved).toMatchObject({
      neededOutMm: -10,
      moves: [
        { slide: 'first', outMm: -5 },
        { slide: 'main', outMm: -3 },
      ],
    })
    expect(moved!.leftCents).toBeCloseTo(1200 * Math.log2(2620 / 2624), 12)
  })

  it('helps only fingerings whose route contains the loop; the main slide helps all', () => {
    const second = route(2100, 2110, ['L2'])
    expect(slideMovements([second], [third, first])[0]!.moves).toEqual([])
    expect(slideMovements([second], [third, main])[0]!.moves).toEqual([{ slide: 'main', outMm: 5 }])
  })

  it('throws for a slide that stands beyond its travel', () => {
    expect(() => slideMovements([], [{ id: 'third', outMm: 11, travelMm: 10 }])).toThrow(RangeError)
    expect(() => slideReach([], 2000, [{ id: 'third', outMm: Number.NaN, travelMm: 10 }])).toThrow(RangeError)
  })

  it('throws for slides that can add the whole route', () => {
    expect(() => slideReach(['L3'], 20, [third])).toThrow(
      'Slides that add 20 mm do not suit a route of 20 mm.',
    )
  })
})

describe('slideReach', () => {
  it('is the error that is just brought to zero', () => {
    const target = targetLength(2000, 5)
    fc.assert(
      fc.property(fc.double({ min: -60, max: 60, noNaN: true }), (errorCents) => {
        const reach = slideReach(['L1', 'L3'], target, [third, first, main])
        const [moved] = slideMovements(
          [route(target * 2 ** (-errorCents / 1200), target)],
          [third, first, main],
        )
        const reached = errorCents <= reach.sharpCents && errorCents >= -reach.flatCents
        expect(Math.abs(moved!.leftCents) < 1e-9).toBe(reached)
      }),
    )
  })

  it('makes what the solver leaves what the slides leave', async () => {
    const slides = [{ ...third, travelMm: 6 }]
    const rows = sevenFingerings.map((name) => {
      const row = plainRow(name)
      return { ...row, reach: slideReach(row.loops, targetLength(2000, row.semitones), slides) }
    })
    for (const objective of ['rms', 'largest'] as const) {
      const answer = solved(plainThree([], objective, { rows }), await loadHighs())
      const movements = slideMovements(
        answer.rows.map((row, at) => ({ ...row, loops: rows[at]!.loops })),
        slides,
      )
      expect(movements.some((movement) => movement.leftCents > 1)).toBe(true)
      for (const [at, movement] of movements.entries()) {
        expect(movement.leftCents).toBeCloseTo(answer.rows[at]!.leftCents, 7)
      }
    }
  })
})
