import type { ReactNode } from 'react'
import type { Bounds, Drawing } from '#shared/bench/drawing/drawing.ts'
import { checkLineMm } from '#shared/bench/drawing/template.ts'
import { marksOf, type Tile, type Tiling, tiledDrawing } from '#shared/bench/drawing/tiles.ts'
import { templateWords as words } from '../../words/template.ts'
import { DrawingSvg } from '../DrawingView.tsx'
import { sheetHeightMm, sheetWidthMm } from './paper.ts'

/** How far two sheets lie over each other, and the strip below each for its check line and its place, mm. */
const overlapMm = 16
const stripMm = 16
/** Nobody glues more sheets than this. */
export const mostSheets = 40

/** How a template is laid on both papers at full size: on one page, or over several. */
export interface TemplateLayout {
  readonly landscape: boolean
  /** `null` when it fits on one page. */
  readonly tiling: Tiling | null
}

/** Lays a template out: on one page where it fits one way or the other, else on as few as there need be. */
export function templateLayout(template: Drawing): TemplateLayout {
  const { leftMm, rightMm, bottomMm, topMm } = template.bounds
  const [widthMm, heightMm] = [rightMm - leftMm, topMm - bottomMm]
  if (widthMm <= sheetWidthMm && heightMm <= sheetHeightMm) return { landscape: false, tiling: null }
  if (widthMm <= sheetHeightMm && heightMm <= sheetWidthMm) return { landscape: true, tiling: null }
  const upright = tiledDrawing(template, sheetWidthMm, sheetHeightMm - stripMm, overlapMm)
  const across = tiledDrawing(template, sheetHeightMm, sheetWidthMm - stripMm, overlapMm)
  return across.tiles.length < upright.tiles.length
    ? { landscape: true, tiling: across }
    : { landscape: false, tiling: upright }
}

interface TemplateProps {
  readonly template: Drawing
  readonly layout: TemplateLayout
}

/** A template at full size, for paper. */
export function Template({ template, layout }: TemplateProps): ReactNode {
  const { tiling } = layout
  return (
    <div className="onPaper template">
      {tiling === null ? (
        <DrawingSvg drawing={template} label={template.title} unitsPerMm={1} unit="mm" />
      ) : (
        tiling.tiles.map((tile) => (
          <TileSheet key={`${tile.column} ${tile.row}`} template={template} tiling={tiling} tile={tile} />
        ))
      )}
    </div>
  )
}

interface TileSheetProps {
  readonly template: Drawing
  readonly tiling: Tiling
  readonly tile: Tile
}

/** One of several sheets: its part of the drawing, the marks it shares, a line to check and its place. */
function TileSheet({ template, tiling, tile }: TileSheetProps): ReactNode {
  const { bounds, column, row } = tile
  const place = words.sheet(template.title, column + 1, row + 1, tiling.columns, tiling.rows)
  return (
    <article className="templateSheet">
      <DrawingSvg drawing={{ ...template, bounds }} label={place} unitsPerMm={1} unit="mm" frame>
        <Marks tiling={tiling} tile={tile} />
      </DrawingSvg>
      <svg
        className="benchDrawing"
        width={`${widthOf(bounds)}mm`}
        height={`${stripMm - 2}mm`}
        viewBox={`0 0 ${widthOf(bounds)} ${stripMm - 2}`}
        aria-hidden="true"
      >
        <path className="dimension" d={`M1 3V7M1 5H${1 + checkLineMm}M${1 + checkLineMm} 3V7`} />
        <text x={5 + checkLineMm} y="6.2" fontSize="3">
          {words.check}
        </text>
        <text x="1" y="11.5" fontSize="3">
          {place}
        </text>
      </svg>
    </article>
  )
}

function widthOf({ leftMm, rightMm }: Bounds): number {
  return rightMm - leftMm
}

/** Half the size of a cross, mm. */
const crossMm = 5

function Marks({ tiling, tile }: { readonly tiling: Tiling; readonly tile: Tile }): ReactNode {
  return marksOf(tiling, tile, overlapMm).map(({ xMm, yMm }) => (
    <path
      key={`${xMm} ${yMm}`}
      className="dimension mark"
      d={`M${xMm - crossMm} ${-yMm}h${2 * crossMm}M${xMm} ${-yMm - crossMm}v${2 * crossMm}`}
    />
  ))
}
