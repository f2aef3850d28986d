import { type ReactNode, useMemo } from 'react'
import type { Drawing, Shape } from '#shared/bench/drawing/drawing.ts'
import { fittedDrawing } from '#shared/bench/drawing/fitted.ts'
import { arcPath } from '#shared/bench/drawing/svg.ts'
import { plainFigure } from '#shared/quantity/figures.ts'
import { unitMm } from '#shared/quantity/units.ts'
import { roundDown } from '../look/roundScale.ts'
import { ScaleBar } from '../look/ScaleBar.tsx'
import { useWidth } from '../look/useWidth.ts'
import { PictureOut } from '../picture/PictureOut.tsx'
import { useSettings } from '../state/settings.ts'

interface DrawingViewProps {
  /** Makes the drawing with words of a height in its own millimetres. */
  readonly draw: (heightMm: number) => Drawing
  readonly label: string
  /** Name of the file when it is saved. */
  readonly name: string
}

const leastWordsPx = 12.5

/** A drawing to scale, as large as there is room, with a bar to measure it by. */
export function DrawingView({ draw, label, name }: DrawingViewProps): ReactNode {
  const [frame, widthPx] = useWidth<HTMLDivElement>()
  const fitted = useMemo(
    () => (widthPx === 0 ? null : fittedDrawing(draw, widthPx, heightFor(widthPx), leastWordsPx)),
    [draw, widthPx],
  )
  return (
    <div className="drawingFrame" ref={frame}>
      {fitted === null ? null : (
        <>
          <PictureOut name={name} title={label}>
            <DrawingSvg drawing={fitted.drawing} label={label} unitsPerMm={fitted.scale} unit="px" />
          </PictureOut>
          <DrawingScale pxPerMm={fitted.scale} />
        </>
      )}
    </div>
  )
}

/** Height that a drawing may take beside its width, px. */
function heightFor(widthPx: number): number {
  return Math.min(560, Math.max(400, widthPx / 2))
}

interface DrawingSvgProps {
  readonly drawing: Drawing
  readonly label: string
  readonly unitsPerMm: number
  readonly unit: 'px' | 'mm'
  /** Draws where the drawing ends, as on a sheet that is one of several. */
  readonly frame?: boolean
  readonly children?: ReactNode
}

/** A drawing at a scale, in pixels or in millimetres of paper. */
export function DrawingSvg({
  drawing,
  label,
  unitsPerMm,
  unit,
  frame,
  children,
}: DrawingSvgProps): ReactNode {
  const { leftMm, rightMm, bottomMm, topMm } = drawing.bounds
  const [width, height] = [rightMm - leftMm, topMm - bottomMm]
  const size = (mm: number): string => `${(mm * unitsPerMm).toFixed(2)}${unit}`
  return (
    <svg
      className="benchDrawing"
      role="img"
      aria-label={label}
      width={size(width)}
      height={size(height)}
      viewBox={`${leftMm} ${-topMm} ${width} ${height}`}
    >
      {drawing.shapes.map((shape, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no other name, and are drawn anew together
        <ShapeOf key={i} shape={shape} />
      ))}
      {frame ? <rect className="frame" x={leftMm} y={-topMm} width={width} height={height} /> : null}
      {children}
    </svg>
  )
}

function ShapeOf({ shape }: { readonly shape: Shape }): ReactNode {
  if (shape.kind === 'arc') return <path className={shape.stroke} d={arcPath(shape)} />
  if (shape.kind === 'line') {
    const { from, to, stroke } = shape
    return <line className={stroke} x1={from.xMm} y1={-from.yMm} x2={to.xMm} y2={-to.yMm} />
  }
  const { at, text, heightMm, upright } = shape
  return (
    <text
      x={at.xMm}
      y={-at.yMm}
      fontSize={heightMm}
      textAnchor="middle"
      {...(upright ? { transform: `rotate(-90 ${at.xMm} ${-at.yMm})` } : {})}
    >
      {text}
    </text>
  )
}

const widestBarPx = 140
const longestBarMm = 200
/** The shortest bar, in the unit shown. */
const leastOfUnit = 0.1

/** A bar of a round length at the drawing's scale. */
function DrawingScale({ pxPerMm }: { readonly pxPerMm: number }): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const inUnit = unitMm(unit)
  const mm = inUnit * roundDown(Math.max(Math.min(longestBarMm, widestBarPx / pxPerMm) / inUnit, leastOfUnit))
  return (
    <ScaleBar lengthPx={mm * pxPerMm} place="drawingScale">
      {`${plainFigure(mm / inUnit, mm < inUnit ? 1 : 0)} ${unit}`}
    </ScaleBar>
  )
}
