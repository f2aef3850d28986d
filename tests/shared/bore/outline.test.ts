import { describe, expect, test } from 'vitest'
import { boreLengthMm } from '#shared/bore/checkBore.ts'
import { bendInertanceShare } from '#shared/bore/insertTable.ts'
import { boreOutline, moveJoint } from '#shared/bore/outline.ts'
import { demand, highBore } from './bores.ts'

describe('the outline of a bore', () => {
  const outline = boreOutline(highBore)

  test('runs from the first tube to the rim and never goes back', () => {
    expect(outline.points[0]).toEqual([0, 3.66])
    expect(outline.points.at(-1)).toEqual([1395, 122])
    const back = outline.points.filter(([x], i) => i > 0 && x < outline.points[i - 1]![0])
    expect(back).toEqual([])
  })

  test('knows its joints and the place of the valves', () => {
    expect(outline.jointsMm).toEqual([0, 0, 3, 73, 313, 313, 845, 1395])
    expect(outline.valvesAtMm).toBe(313)
    expect(boreOutline([]).valvesAtMm).toBeNull()
  })

  test('a bell of equal diameters is drawn straight', () => {
    const { points } = boreOutline([
      { kind: 'bell', lengthMm: 10, startDiameterMm: 9, endDiameterMm: 9, flare: 1 },
    ])
    for (const [, diameterMm] of points) expect(diameterMm).toBe(9)
  })

  test('a profile starts where the section before it ends', () => {
    const { points } = boreOutline([
      { kind: 'cylinder', lengthMm: 10, diameterMm: 9 },
      {
        kind: 'profile',
        points: [
          [100, 9],
          [130, 12],
        ],
      },
    ])
    expect(points.slice(2)).toEqual([
      [10, 9],
      [40, 12],
    ])
  })
})

describe('moving a joint', () => {
  test('lengthens one section, shortens the next and keeps the whole', () => {
    const moved = demand(moveJoint(highBore, 5, 20))
    expect(moved[5]).toMatchObject({ lengthMm: 552 })
    expect(moved[6]).toMatchObject({ lengthMm: 530 })
    expect(boreLengthMm(moved)).toBe(boreLengthMm(highBore))
  })

  test('steps over the valves', () => {
    const moved = demand(moveJoint(highBore, 3, -10))
    expect(moved[3]).toMatchObject({ lengthMm: 230 })
    expect(moved[5]).toMatchObject({ lengthMm: 542 })
  })

  test.each([
    ['past the end of a section', 5, 600, 'sections[6].lengthMm'],
    ['by no number', 5, Number.NaN, 'sections[5].lengthMm'],
    ['of a cup', 0, 1, 'sections[0]'],
    ['at the rim', 6, 1, 'sections[-1]'],
  ])('%s is refused', (_, index, byMm, path) => {
    expect(moveJoint(highBore, index, byMm)).toMatchObject({ ok: false, refusal: { path } })
  })
})

test('a bend has less inertance the tighter it is, down to half', () => {
  expect(bendInertanceShare(12, 1e9)).toBeCloseTo(1, 12)
  expect(bendInertanceShare(12, 12)).toBeCloseTo((1 + Math.sqrt(0.75)) / 2, 12)
  expect(bendInertanceShare(12, 6)).toBe(0.5)
})
