import { describe, expect, it } from 'vitest'
import { mainSlideReach } from '#shared/bench/mainSlideReach.ts'

describe('A main slide', () => {
  it('that cannot move stays at its pitch', () => {
    const reach = mainSlideReach(1400, { outMm: 0, travelMm: 0 }, 440, 440)
    expect(reach).toEqual({ lowestHz: 440, highestHz: 440, movementMm: 0, reaches: true, leftTubeMm: 0 })
  })

  // 39.773 mm of tube are 19.886 of movement; 15 mm are left, 2 × 4.886 = 9.773 mm of tube remain
  it('with too little travel leaves the rest of the tube to be found', () => {
    const reach = mainSlideReach(1400, { outMm: 5, travelMm: 20 }, 452.5, 440)
    expect(reach.movementMm).toBeCloseTo(19.886, 3)
    expect(reach.reaches).toBe(false)
    expect(reach.leftTubeMm).toBeCloseTo(9.773, 3)
    expect(reach.lowestHz).toBeCloseTo((452.5 * 1400) / 1430, 9)
    expect(reach.highestHz).toBeCloseTo((452.5 * 1400) / 1390, 9)
  })

  // 3962.4 × (435/440 − 1) / 2 = −22.51 mm = −0.886 in
  it('moves half of the tube: 0.89 in for 1.77 in', () => {
    const reach = mainSlideReach(3962.4, { outMm: 10, travelMm: 60 }, 435, 440)
    expect(reach.movementMm / 25.4).toBeCloseTo(-0.886, 3)
    expect(reach.leftTubeMm).toBeCloseTo(-25.027, 2)
  })
})
