import type { Bounds, Drawing } from './drawing.ts'

/** One sheet of a drawing that is too large for the paper. Columns run from the left, rows from the top. */
export interface Tile {
  readonly column: number
  readonly row: number
  /** The part of the drawing that is on it, the overlap with its neighbours in it. */
  readonly bounds: Bounds
}

/** A drawing laid out over sheets that are put together by their marks. */
export interface Tiling {
  readonly columns: number
  readonly rows: number
  /** Row by row. */
  readonly tiles: readonly Tile[]
}

/**
 * Lays a drawing at full size over as few sheets as hold it, each `widthMm` × `heightMm`, that overlap by
 * `overlapMm`. Every place of the drawing is on a sheet; a drawing that fits is on one.
 *
 * @throws RangeError when a sheet is not larger than its overlap
 * @example tiledDrawing(templateDrawing(drawing), 186, 240, 15).tiles.length // 4
 */
export function tiledDrawing(
  { bounds }: Drawing,
  widthMm: number,
  heightMm: number,
  overlapMm: number,
): Tiling {
  if (!(Math.min(widthMm, heightMm) > overlapMm && overlapMm >= 0))
    throw new RangeError(`Sheets of ${widthMm} × ${heightMm} mm cannot overlap by ${overlapMm} mm`)
  const columns = sheetsAlong(bounds.rightMm - bounds.leftMm, widthMm, overlapMm)
  const rows = sheetsAlong(bounds.topMm - bounds.bottomMm, heightMm, overlapMm)
  const tiles = Array.from({ length: rows * columns }, (_, i) => {
    const [row, column] = [Math.floor(i / columns), i % columns]
    const leftMm = bounds.leftMm + column * (widthMm - overlapMm)
    const topMm = bounds.topMm - row * (heightMm - overlapMm)
    return { column, row, bounds: { leftMm, topMm, rightMm: leftMm + widthMm, bottomMm: topMm - heightMm } }
  })
  return { columns, rows, tiles }
}

function sheetsAlong(lengthMm: number, sheetMm: number, overlapMm: number): number {
  return Math.max(1, Math.ceil((lengthMm - overlapMm) / (sheetMm - overlapMm) - 1e-9))
}

/** Where a mark stands that two or four sheets share: the middle of an overlap. */
export interface Mark {
  readonly xMm: number
  readonly yMm: number
}

/**
 * The marks on a sheet that also stand on its neighbours: laid over each other they put the drawing together. They
 * stand in the middle of each overlap, near both of its ends.
 *
 * @example marksOf(tiling, tiling.tiles[0]!, 15)
 */
export function marksOf({ columns, rows }: Tiling, tile: Tile, overlapMm: number): readonly Mark[] {
  const { leftMm, rightMm, topMm, bottomMm } = tile.bounds
  const half = overlapMm / 2
  const xs = [
    ...(tile.column > 0 ? [leftMm + half] : []),
    ...(tile.column < columns - 1 ? [rightMm - half] : []),
  ]
  const ys = [...(tile.row > 0 ? [topMm - half] : []), ...(tile.row < rows - 1 ? [bottomMm + half] : [])]
  // Both ends of an overlap, clear of the corner where four sheets meet.
  const alongX = [leftMm + 1.5 * overlapMm, rightMm - 1.5 * overlapMm]
  const alongY = [topMm - 1.5 * overlapMm, bottomMm + 1.5 * overlapMm]
  return [
    ...xs.flatMap((xMm) => alongY.map((yMm) => ({ xMm, yMm }))),
    ...ys.flatMap((yMm) => alongX.map((xMm) => ({ xMm, yMm }))),
  ]
}
