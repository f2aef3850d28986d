import { describe, expect, it } from 'vitest'
import { slideMove } from '#shared/bench/readings/slideMove.ts'

describe('What a slide is to do for a change of tube', () => {
  it('is half of it as movement, out for tube to add and in for tube to take off', () => {
    expect(slideMove(6.4)).toEqual({ way: 'out', movementMm: 3.2, leftMm: 0 })
    expect(slideMove(-6.4)).toEqual({ way: 'in', movementMm: 3.2, leftMm: 0 })
  })

  // 12 mm of tube are 6 of movement; 2 in leave 8 mm of tube
  it('is no more than it has, and the rest is tube left over', () => {
    expect(slideMove(-12, { outMm: 2, travelMm: 30 })).toEqual({ way: 'in', movementMm: 2, leftMm: 8 })
    expect(slideMove(-12, { outMm: 0, travelMm: 30 })).toEqual({ way: 'in', movementMm: 0, leftMm: 12 })
    expect(slideMove(-12, { outMm: 6, travelMm: 30 })).toEqual({ way: 'in', movementMm: 6, leftMm: 0 })
    expect(slideMove(12, { outMm: 27, travelMm: 30 })).toEqual({ way: 'out', movementMm: 3, leftMm: 6 })
    expect(slideMove(12, { outMm: 2, travelMm: 30 })).toEqual({ way: 'out', movementMm: 6, leftMm: 0 })
  })
})
