import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dot, leastSquares } from '#shared/bench/readings/leastSquares.ts'
import { eigen } from '#shared/bench/readings/symmetric.ts'

const number = fc.double({ min: -100, max: 100, noNaN: true })
const square = (size: number) =>
  fc.array(fc.array(number, { minLength: size, maxLength: size }), { minLength: size, maxLength: size })

describe('The eigenvectors of a symmetric matrix', () => {
  it('of nothing are none, and of noughts are the axes', () => {
    expect(eigen([])).toEqual({ values: [], vectors: [] })
    expect(
      eigen([
        [0, 0],
        [0, 0],
      ]),
    ).toEqual({
      values: [0, 0],
      vectors: [
        [1, 0],
        [0, 1],
      ],
    })
  })

  it('of [[2, 1], [1, 2]] belong to 1 and 3', () => {
    expect(
      [
        ...eigen([
          [2, 1],
          [1, 2],
        ]).values,
      ].sort(),
    ).toEqual([expect.closeTo(1, 12), expect.closeTo(3, 12)])
  })

  it('are only stretched by the matrix, each by its own value, and stand square to each other', () => {
    fc.assert(
      fc.property(square(5), (rows) => {
        const matrix = rows.map((row, i) => row.map((value, j) => value + rows[j]![i]!))
        const { values, vectors } = eigen(matrix)
        for (const [k, vector] of vectors.entries()) {
          for (const [i, row] of matrix.entries())
            expect(dot(row, vector)).toBeCloseTo(values[k]! * vector[i]!, 8)
          for (const [l, other] of vectors.entries())
            expect(dot(vector, other)).toBeCloseTo(Number(k === l), 10)
        }
      }),
    )
  })
})

describe('Least squares', () => {
  it('of no unknowns has an empty answer', () => {
    expect(leastSquares([[], []], [1, 2])).toMatchObject({ solution: [], rank: 0 })
  })

  // the line through (0, 1), (1, 2), (2, 4): slope 3/2, start 5/6
  it('draws the line that statistics books draw', () => {
    const { solution, covariance } = leastSquares(
      [
        [1, 0],
        [1, 1],
        [1, 2],
      ],
      [1, 2, 4],
    )
    expect(solution[0]).toBeCloseTo(5 / 6, 12)
    expect(solution[1]).toBeCloseTo(3 / 2, 12)
    // inverse of [[3, 3], [3, 5]] is [[5, −3], [−3, 3]] / 6
    expect(covariance[0]![0]).toBeCloseTo(5 / 6, 12)
    expect(covariance[0]![1]).toBeCloseTo(-1 / 2, 12)
    expect(covariance[1]![1]).toBeCloseTo(1 / 2, 12)
  })

  it('does not mind units: columns a million times larger have answers a million times smaller', () => {
    const { solution, rank } = leastSquares(
      [
        [1e6, 1],
        [1e6, 2],
        [1e6, 4],
      ],
      [3, 4, 6],
    )
    expect(rank).toBe(2)
    expect(solution[0]! * 1e6).toBeCloseTo(2, 9)
  })

  it('says what is not determined: two columns alike, beside one that stands alone', () => {
    const { undetermined, rank, solution } = leastSquares(
      [
        [1, 1, 0],
        [1, 1, 1],
        [2, 2, 3],
      ],
      [2, 3, 7],
    )
    expect(rank).toBe(2)
    expect(undetermined.map((row, j) => row[j]! > 1e-6)).toEqual([true, true, false])
    expect(undetermined[0]![1]).toBeCloseTo(-0.5, 9)
    expect(solution[2]).toBeCloseTo(1, 9)
  })

  it('leaves residuals that no column can explain', () => {
    const problem = fc.tuple(
      fc.array(fc.tuple(number, number, number), { minLength: 4, maxLength: 12 }),
      fc.infiniteStream(number),
    )
    fc.assert(
      fc.property(problem, ([rows, stream]) => {
        const values = rows.map(() => stream.next().value as number)
        const { solution, rank } = leastSquares(rows, values)
        fc.pre(rank === 3)
        const left = rows.map((row, i) => values[i]! - dot(row, solution))
        for (const j of [0, 1, 2] as const) {
          const column = rows.map((row) => row[j])
          expect(Math.abs(dot(column, left))).toBeLessThan(
            1e-4 * (1 + Math.hypot(...column)) * (1 + Math.hypot(...values)),
          )
        }
      }),
    )
  })
})
