import { describe, expect, it } from 'vitest'
import { type AirLayout, airLayout, type DrawnPoint } from '#shared/valves/air/airLayout.ts'
import { airLine, roundedPath } from '#shared/valves/air/airLine.ts'
import { airPath } from '#shared/valves/air/airPath.ts'
import { valvePlan } from '#shared/valves/air/valvePlan.ts'
import { routeLengthMm, routing } from '#shared/valves/route.ts'
import { systemOf, systems } from '#shared/valves/systems/systems.ts'
import { measures } from './measures.ts'

function drawn(id: string, width = 0) {
  const { valves, loops } = systemOf(id)!.build(4000)
  const plan = valvePlan(valves, loops)
  return { valves, loops, plan, layout: airLayout(plan, measures, width) }
}

function lengthOf(points: readonly DrawnPoint[]): number {
  return points
    .slice(1)
    .reduce((sum, point, i) => sum + Math.hypot(point.x - points[i]!.x, point.y - points[i]!.y), 0)
}

function inside({ width, height }: AirLayout, { x, y }: DrawnPoint): boolean {
  return x >= 0 && x <= width && y >= 0 && y <= height
}

describe('the drawing of a system', () => {
  it('has the two legs of every loop to one scale, the longest as long as asked', () => {
    const { layout, loops } = drawn('plain-4')
    const longestMm = Math.max(...loops.map(({ lengthMm }) => lengthMm))
    for (const { loop, points } of layout.loops) {
      const legs = 2 * Math.abs(points[1].y - points[0].y)
      expect(legs).toBeCloseTo((2 * measures.longestLeg * loop.lengthMm) / longestMm, 9)
      expect(points[2].x - points[1].x).toBeCloseTo(2 * measures.bow, 9)
    }
  })

  it('has the loops of the first passage up, and those of the second down from its own line', () => {
    const { layout } = drawn('compensating-4')
    expect(layout.lines).toHaveLength(2)
    for (const { pass, up, points } of layout.loops) {
      expect(up).toBe(pass === 0)
      expect(points[0].y).toBe(layout.lines[pass])
    }
  })

  it('is as wide as it must be, and as wide as it is asked to be when there is more room', () => {
    const narrow = drawn('independent-combination').layout
    expect(drawn('independent-combination', 100).layout.width).toBe(narrow.width)
    expect(drawn('independent-combination', narrow.width + 400).layout.width).toBeCloseTo(
      narrow.width + 400,
      9,
    )
  })

  it.each(systems)(
    'of $id keeps its loops apart, within the casing of their valve, on the sheet',
    ({ id }) => {
      const { layout, loops } = drawn(id)
      expect(layout.loops).toHaveLength(loops.length)
      for (const { valve, points, pass } of layout.loops) {
        const casing = layout.valves.find((each) => each.valve === valve)!
        expect(points[0].x).toBeGreaterThanOrEqual(casing.left)
        expect(points[3].x).toBeLessThanOrEqual(casing.right)
        expect(points.every((point) => inside(layout, point))).toBe(true)
        const others = layout.loops.filter((other) => other.points !== points && other.pass === pass)
        for (const other of others) {
          expect(
            other.points[3].x <= points[0].x - measures.loopGap / 2 ||
              other.points[0].x >= points[3].x + measures.loopGap / 2,
          ).toBe(true)
        }
      }
    },
  )
})

describe('the line of the air', () => {
  it.each(systems)('of $id runs unbroken from end to end, upright and level, for every setting', ({ id }) => {
    const { layout, plan, valves } = drawn(id)
    for (let down = 0; down < 1 << valves.length; down++) {
      const points = airLine(layout, airPath(plan, down)).flatMap((stretch) => stretch.points)
      expect(points[0]).toEqual({ x: 0, y: layout.lines[0] })
      expect(points.at(-1)).toEqual({ x: layout.width, y: layout.lines[0] })
      for (const [i, point] of points.slice(1).entries()) {
        const { x, y } = points[i]!
        expect(Math.min(Math.abs(point.x - x), Math.abs(point.y - y))).toBeLessThan(1e-9)
      }
      expect(points.every((point) => inside(layout, point))).toBe(true)
    }
  })

  it('is longer than the open one by the tube of its loops, to scale, in a system of one passage', () => {
    const { layout, plan, valves, loops } = drawn('double')
    const system = routing(4000, valves, loops)
    const drawnLength = (down: number) =>
      lengthOf(airLine(layout, airPath(plan, down)).flatMap((stretch) => stretch.points))
    for (let down = 1; down < 16; down++) {
      const addedMm = routeLengthMm(system, down) - routeLengthMm(system, 0)
      expect(drawnLength(down) - drawnLength(0)).toBeCloseTo(2 * layout.legPerMm * addedMm, 6)
    }
  })

  it('rounds its corners, less where a side is short, and leaves out what has no length', () => {
    const at = (x: number, y: number) => ({ x, y })
    expect(roundedPath([at(0, 0), at(10, 0), at(10, 10)], 2)).toBe('M0 0L8 0Q10 0 10 2L10 10')
    expect(roundedPath([at(0, 0), at(2, 0), at(2, 0), at(2, 10)], 5)).toBe('M0 0L1 0Q2 0 2 1L2 10')
    expect(roundedPath([at(3, 4), at(3, 4)], 5)).toBe('M3 4')
  })

  it('refuses a path of another system', () => {
    const other = drawn('compensating-3')
    expect(() => airLine(drawn('plain-3').layout, airPath(other.plan, 0b101))).toThrow('no loop C1')
  })
})
