import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drawing, line, point } from '#shared/bench/drawing/drawing.ts'
import { marksOf, tiledDrawing } from '#shared/bench/drawing/tiles.ts'

/** A drawing of that size with its lower left corner at (−20, 10). */
function sized(widthMm: number, heightMm: number) {
  return drawing('', [line('outline', point(-20, 10), point(widthMm - 20, 10 + heightMm))], 0)
}

describe('A drawing over several sheets', () => {
  it('that fits is on one, without marks', () => {
    const tiling = tiledDrawing(sized(186, 240), 186, 240, 16)
    expect(tiling.tiles).toHaveLength(1)
    expect(marksOf(tiling, tiling.tiles[0]!, 16)).toEqual([])
  })

  // −70.1 + 256.1 is 186.00000000000003
  it('that fits but for rounding is on one', () => {
    const plain = drawing('', [line('outline', point(-256.1, 0), point(-70.1, 240))], 0)
    expect(tiledDrawing(plain, 186, 240, 16)).toMatchObject({ columns: 1, rows: 1 })
  })

  it('a hair too wide is on two', () => {
    expect(tiledDrawing(sized(186.01, 240), 186, 240, 16)).toMatchObject({ columns: 2, rows: 1 })
  })

  it('of 700 × 300 mm is on five columns of two rows', () => {
    // 1 + ⌈(700 − 186)/(186 − 16)⌉ = 5; 1 + ⌈(300 − 240)/(240 − 16)⌉ = 2
    expect(tiledDrawing(sized(700, 300), 186, 240, 16)).toMatchObject({ columns: 5, rows: 2 })
  })

  it('begins at its upper left corner, row by row', () => {
    const { tiles } = tiledDrawing(sized(300, 300), 186, 240, 16)
    expect(tiles.map(({ column, row }) => [column, row])).toEqual([
      [0, 0],
      [1, 0],
      [0, 1],
      [1, 1],
    ])
    expect(tiles[0]!.bounds).toEqual({ leftMm: -20, topMm: 310, rightMm: 166, bottomMm: 70 })
    expect(tiles[1]!.bounds.leftMm).toBe(150)
  })

  it('is whole: every place is on a sheet, neighbours share the overlap, and no sheet is empty', () => {
    const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(
      fc.property(mm(1, 3000), mm(1, 1500), mm(0, 40), (width, height, overlap) => {
        const plain = sized(width, height)
        const { tiles, columns, rows } = tiledDrawing(plain, 186, 240, overlap)
        const last = tiles.at(-1)!.bounds
        expect(last.rightMm).toBeGreaterThanOrEqual(plain.bounds.rightMm - 1e-6)
        expect(last.bottomMm).toBeLessThanOrEqual(plain.bounds.bottomMm + 1e-6)
        if (columns > 1) expect(last.leftMm + overlap).toBeLessThan(plain.bounds.rightMm + 1e-6)
        if (rows > 1) expect(last.topMm - overlap).toBeGreaterThan(plain.bounds.bottomMm - 1e-6)
        if (columns > 1) expect(tiles[0]!.bounds.rightMm - tiles[1]!.bounds.leftMm).toBeCloseTo(overlap, 6)
      }),
    )
  })

  it('has every mark of a sheet on a neighbour too, inside of both', () => {
    const tiling = tiledDrawing(sized(700, 600), 186, 240, 16)
    const inside = ({ xMm, yMm }: { xMm: number; yMm: number }, i: number) => {
      const { leftMm, rightMm, topMm, bottomMm } = tiling.tiles[i]!.bounds
      return xMm > leftMm && xMm < rightMm && yMm > bottomMm && yMm < topMm
    }
    for (const [i, tile] of tiling.tiles.entries()) {
      const marks = marksOf(tiling, tile, 16)
      expect(marks.length).toBeGreaterThanOrEqual(4)
      for (const mark of marks) {
        expect(inside(mark, i)).toBe(true)
        const sharing = tiling.tiles.filter(
          (other, j) =>
            inside(mark, j) &&
            marksOf(tiling, other, 16).some((m) => Math.hypot(m.xMm - mark.xMm, m.yMm - mark.yMm) < 1e-9),
        )
        expect(sharing.length).toBeGreaterThanOrEqual(2)
      }
    }
  })

  it('on sheets that are all overlap, along or across, is refused', () => {
    expect(() => tiledDrawing(sized(10, 10), 16, 240, 16)).toThrow(RangeError)
    expect(() => tiledDrawing(sized(10, 10), 186, 16, 16)).toThrow(RangeError)
  })
})
