import { describe, expect, it } from 'vitest'
import { tradeOff } from '#shared/solve/tradeOff.ts'
import { loadHighs } from '../../../src-main/headless/loadHighs.ts'
import { objectiveOutside } from './errorsOutside.ts'
import { freeLoop, plainRow, plainThree, sevenFingerings } from './plainProblem.ts'
import { solved } from './solved.ts'

const programmer = await loadHighs()
const problem = plainThree(sevenFingerings, 'rms')
const curve = tradeOff(problem, 9, programmer)
const points = 'points' in curve ? curve.points : []

describe('tradeOff', () => {
  it('goes from the least rms to the least largest error in as many points as asked', () => {
    expect(curve.status).toBe('converged')
    expect(points).toHaveLength(9)
    expect(points[0]!.rmsCents).toBeCloseTo(solved(problem, programmer).rmsCents, 9)
    const largest = solved({ ...problem, objective: 'largest' }, programmer)
    expect(points[8]!.largestCents).toBeCloseTo(largest.largestCents, 5)
    expect(points[8]!.rmsCents).toBeCloseTo(largest.rmsCents, 5)
  })

  it('falls in the largest error by even shares while the rms rises, ever faster', () => {
    const share = (points[0]!.largestCents - points[8]!.largestCents) / 8
    const rises = points.slice(1).map((point, at) => point.rmsCents - points[at]!.rmsCents)
    for (const [at, point] of points.entries()) {
      expect(point.largestCents).toBeCloseTo(points[0]!.largestCents - at * share, 5)
    }
    for (const [at, rise] of rises.entries()) {
      expect(rise).toBeGreaterThan(at === 0 ? 0 : rises[at - 1]!)
    }
  })

  it('has no feasible neighbour of a point between with less rms within its largest error', () => {
    for (const point of points.slice(1, -1)) {
      const better = neighbours(point.lengthsMm).filter(
        (lengthsMm) =>
          objectiveOutside({ ...problem, objective: 'largest' }, lengthsMm, 0) <= point.largestCents &&
          objectiveOutside(problem, lengthsMm, 0) < point.rmsCents - 1e-6,
      )
      expect(better).toEqual([])
    }
  })

  it('is one point when one set of lengths does both', () => {
    const one = tradeOff({ ...problem, rows: [plainRow('1')], loops: [freeLoop('L1')] }, 5, programmer)
    expect('points' in one && one.points).toHaveLength(1)
  })

  it('refuses what the solver refuses, and throws for fewer than two points', () => {
    expect(tradeOff({ ...problem, rows: [] }, 5, programmer)).toMatchObject({
      status: 'refused',
      refusals: [{ kind: 'allWeightsZero' }],
    })
    expect(() => tradeOff(problem, 1, programmer)).toThrow(RangeError)
  })
})

/** A grid around given lengths, from a hundredth of a millimetre to ten. */
function neighbours(
  lengthsMm: Readonly<Record<string, number>>,
): readonly Readonly<Record<string, number>>[] {
  const steps = [-10, -1, -0.1, -0.01, 0, 0.01, 0.1, 1, 10]
  return steps.flatMap((first) =>
    steps.flatMap((second) =>
      steps.map((third) => ({
        L1: lengthsMm.L1! + first,
        L2: lengthsMm.L2! + second,
        L3: lengthsMm.L3! + third,
      })),
    ),
  )
}
