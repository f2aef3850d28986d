import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Area, WindowPlace } from '../../../src-main/main/windowPlace.ts'
import { leastHeight, leastWidth, placeOn } from '../../../src-main/main/windowPlace.ts'

const desk: Area = { x: 0, y: 0, width: 1920, height: 1040 }
const beside: Area = { x: 1920, y: 0, width: 1280, height: 1024 }

const place = (x: number, y: number, width = 1200, height = 800): WindowPlace => ({
  x,
  y,
  width,
  height,
  maximized: false,
})

describe('The place of the window', () => {
  test('is the middle of the first screen when nothing is known', () => {
    expect(placeOn([desk], null)).toEqual({ x: 280, y: 80, width: 1360, height: 880, maximized: false })
  })

  test('is where it was while that screen is there', () => {
    expect(placeOn([desk, beside], place(2000, 100))).toEqual(place(2000, 100))
  })

  test('is the middle of the first screen once the other is gone, maximized still', () => {
    const stored = { ...place(2000, 100), maximized: true }
    expect(placeOn([desk], stored)).toMatchObject({ x: 280, y: 80, maximized: true })
  })

  test('is not above the screen, where the title bar could not be reached', () => {
    expect(placeOn([desk], place(100, -200)).y).toBe(80)
    expect(placeOn([desk], place(100, 1030)).y).toBe(80)
  })

  test('may hang over the side while enough of the title bar shows', () => {
    expect(placeOn([desk], place(-1000, 10)).x).toBe(-1000)
    expect(placeOn([desk], place(-1100, 10)).x).toBe(280)
  })

  test('is no larger than a screen that is smaller than before', () => {
    const small: Area = { x: 0, y: 0, width: 900, height: 600 }
    expect(placeOn([small], place(0, 0, 1360, 880))).toMatchObject({ width: 900, height: 600 })
    expect(placeOn([small], null)).toMatchObject({ x: 0, y: 0, width: 900, height: 600 })
  })

  test('always shows a graspable title bar on some screen and fits it in size', () => {
    const integer = fc.integer({ min: -5000, max: 5000 })
    const size = fc.integer({ min: 1, max: 6000 })
    const area = fc.record({ x: integer, y: integer, width: size, height: size })
    const screen = fc.record({
      x: integer,
      y: integer,
      width: fc.integer({ min: 800, max: 4000 }),
      height: fc.integer({ min: 600, max: 3000 }),
    })
    fc.assert(
      fc.property(screen, screen, area, fc.boolean(), (first, second, stored, maximized) => {
        const found = placeOn([first, second], { ...stored, maximized })
        const shows = [first, second].some((one) => {
          const width = Math.min(found.x + found.width, one.x + one.width) - Math.max(found.x, one.x)
          const fits = found.width <= one.width && found.height <= one.height
          return width >= 120 && found.y >= one.y && found.y + 32 <= one.y + one.height && fits
        })
        expect(shows).toBe(true)
      }),
    )
  })

  test('is at least as large as the window can be used, where the screen allows it', () => {
    expect(placeOn([desk], place(10, 10, 200, 100))).toMatchObject({ width: leastWidth, height: leastHeight })
  })
})
