import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { slackOf } from '#shared/solve/halfSpace.ts'
import { solveQuadratic } from '#shared/solve/quadraticProgram.ts'

const identity = new Float64Array([1, 0, 0, 1])
const atLeast = (column: number, least: number) => ({
  columns: [column],
  coefficients: [1],
  sign: 1 as const,
  least,
})
const atMost = (column: number, most: number) => ({
  columns: [column],
  coefficients: [1],
  sign: -1 as const,
  least: -most,
})

describe('solveQuadratic', () => {
  it('gives the free minimum when no half-space is missed', () => {
    const answer = solveQuadratic({
      matrix: identity,
      gradient: new Float64Array([-3, 4]),
      halfSpaces: [atMost(0, 5)],
    })
    expect(answer).toMatchObject({
      kind: 'solved',
      point: new Float64Array([3, -4]),
      multipliers: new Float64Array([0]),
    })
  })

  it('stops at a half-space with the pull as its multiplier', () => {
    const answer = solveQuadratic({
      matrix: identity,
      gradient: new Float64Array([-3, 4]),
      halfSpaces: [atMost(0, 2)],
    })
    expect(answer).toMatchObject({ point: new Float64Array([2, -4]), multipliers: new Float64Array([1]) })
  })

  it('finds half-spaces that leave nothing between them infeasible', () => {
    const halfSpaces = [atLeast(0, 1), atMost(0, 0.999)]
    expect(solveQuadratic({ matrix: identity, gradient: new Float64Array(2), halfSpaces }).kind).toBe(
      'infeasible',
    )
  })

  it('keeps half-spaces that meet or repeat each other', () => {
    const halfSpaces = [atLeast(0, 1), atMost(0, 1), atLeast(0, 1), atLeast(1, 2), atLeast(1, 2)]
    const answer = solveQuadratic({ matrix: identity, gradient: new Float64Array(2), halfSpaces })
    expect(answer).toMatchObject({ kind: 'solved', point: new Float64Array([1, 2]) })
  })

  it('says that a matrix without a least value is not convex', () => {
    const matrix = new Float64Array([1, 0, 0, -1])
    expect(solveQuadratic({ matrix, gradient: new Float64Array(2), halfSpaces: [] }).kind).toBe('notConvex')
  })

  it('meets the conditions of an optimum on every program, whatever is thought likely', () => {
    const number = fc.double({ min: -10, max: 10, noNaN: true })
    const size = 4
    const vector = fc.array(number, { minLength: size, maxLength: size })
    fc.assert(
      fc.property(
        fc.array(vector, { minLength: size, maxLength: size }),
        vector,
        fc.array(vector, { maxLength: 12 }),
        (roots, gradient, normals) => {
          const matrix = gramPlusOne(roots, size)
          const halfSpaces = normals
            .filter((normal) => Math.hypot(...normal) > 0.1)
            .map((normal, at) => ({
              columns: [0, 1, 2, 3],
              coefficients: normal,
              sign: 1 as const,
              least: -1 - (at % 3),
            }))
          const program = { matrix, gradient: Float64Array.from(gradient), halfSpaces }
          const answer = solveQuadratic(program)
          const hinted = solveQuadratic(program, [...halfSpaces.keys()].slice(0, 3))
          // Every half-space holds 0, so that there is an answer.
          if (answer.kind !== 'solved' || hinted.kind !== 'solved') throw new Error(answer.kind)
          for (let row = 0; row < size; row++) {
            let rest = gradient[row]!
            for (let at = 0; at < size; at++) rest += matrix[row * size + at]! * answer.point[at]!
            for (const [at, halfSpace] of halfSpaces.entries())
              rest -= answer.multipliers[at]! * halfSpace.coefficients[row]!
            expect(Math.abs(rest)).toBeLessThan(1e-6)
            expect(hinted.point[row]).toBeCloseTo(answer.point[row]!, 6)
          }
          for (const [at, halfSpace] of halfSpaces.entries()) {
            const slack = slackOf(halfSpace, answer.point)
            expect(slack).toBeGreaterThan(-1e-9)
            expect(answer.multipliers[at]).toBeGreaterThanOrEqual(-1e-9)
            expect(Math.abs(slack * answer.multipliers[at]!)).toBeLessThan(1e-6)
          }
        },
      ),
      { numRuns: 300 },
    )
  })
})

function gramPlusOne(roots: readonly (readonly number[])[], size: number): Float64Array {
  const matrix = new Float64Array(size * size)
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      matrix[row * size + column] = row === column ? 1 : 0
      for (const root of roots) matrix[row * size + column]! += root[row]! * root[column]!
    }
  }
  return matrix
}
