import { expect, test } from 'vitest'
import { keefeAir } from '#shared/air/keefeAir.ts'

test('at 26.85 °C the air is the one the straight lines are drawn about', () => {
  expect(keefeAir(26.85)).toEqual({
    densityKgPerM3: 1.1769,
    speedMPerS: 347.23,
    viscosityPaS: 1.846e-5,
    heatCapacityRatio: 1.4017,
    sqrtPrandtl: 0.841,
  })
})

test('ten degrees warmer change each figure by its slope', () => {
  const warm = keefeAir(36.85)
  expect(warm.speedMPerS / 347.23).toBeCloseTo(1.0166, 10)
  expect(warm.densityKgPerM3 / 1.1769).toBeCloseTo(0.9665, 10)
  expect(warm.viscosityPaS / 1.846e-5).toBeCloseTo(1.025, 10)
  expect(warm.heatCapacityRatio / 1.4017).toBeCloseTo(0.9998, 10)
  expect(warm.sqrtPrandtl / 0.841).toBeCloseTo(0.998, 10)
})
