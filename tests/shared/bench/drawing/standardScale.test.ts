import { describe, expect, it } from 'vitest'
import { standardScale } from '#shared/bench/drawing/standardScale.ts'

describe('The scale of a drawing', () => {
  it.each([
    [1 / 4.72, 1 / 5],
    [1 / 2.03, 1 / 2.5],
    [1 / 2, 1 / 2],
    [1.9, 1],
    [30, 10],
    [0.001, 0.001],
  ])('is, with room for %f, %f', (most, scale) => {
    expect(standardScale(most)).toBe(scale)
  })
})
