import type { ReactNode } from 'react'
import { Piece, piecesOf } from '../ruler/Piece.tsx'
import type { CompanyStep } from './companySteps.ts'

const tubePx = 16

/** Where the tube of a step ends, mm. */
export function endOf({ pieces }: CompanyStep): number {
  return pieces.reduce((sum, { lengthMm }) => sum + lengthMm, 0)
}

interface StepTubeProps {
  readonly step: CompanyStep
  readonly x: (mm: number) => number
  readonly y: number
  readonly hatch: string
}

/** The tube of a step, its mark, the gap, and the dimension line of the drop it is about. */
export function StepTube({ step, x, y, hatch }: StepTubeProps): ReactNode {
  const endMm = endOf(step)
  const needs = step.requiredMm === null ? null : x(step.requiredMm)
  return (
    <g>
      {piecesOf(step.pieces).map((piece, i) => {
        const { kind } = step.pieces[i]!
        const place = { x: x(piece.fromMm), width: x(piece.fromMm + piece.lengthMm) - x(piece.fromMm), y }
        if (kind === 'wanted' || kind === 'further') {
          return <FurtherPiece key={`${kind} ${piece.loop}`} {...place} wanted={kind === 'wanted'} />
        }
        return (
          <Piece
            key={`${kind} ${piece.loop}`}
            {...place}
            height={tubePx}
            name={piece.loop}
            shaded={i % 2 === 1}
          />
        )
      })}
      {needs === null || needs - x(endMm) < 0.3 ? null : (
        <rect
          x={x(endMm)}
          y={y}
          width={needs - x(endMm)}
          height={tubePx}
          fill={`url(#${hatch})`}
          stroke="var(--brass)"
        />
      )}
      {needs === null ? null : (
        <path d={`M${needs} ${y - 6}v${tubePx + 12}`} stroke="var(--brass)" strokeWidth="2.5" />
      )}
      {step.span === null ? null : <Dimension span={step.span} x={x} y={y - 9} />}
    </g>
  )
}

/** A further loop: brass where the design has it, in dashes where it only would. */
function FurtherPiece({
  x,
  y,
  width,
  wanted,
}: {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly wanted: boolean
}): ReactNode {
  return (
    <rect
      x={x}
      y={y}
      width={Math.max(width, 0.5)}
      height={tubePx}
      fill={wanted ? 'none' : 'var(--brassfill)'}
      stroke="var(--brass)"
      strokeWidth={wanted ? 1.6 : 1}
      strokeDasharray={wanted ? '4 3' : undefined}
    />
  )
}

/** A dimension line with arrows, its words before it where they do not fit between. */
function Dimension({
  span,
  x,
  y,
}: {
  readonly span: NonNullable<CompanyStep['span']>
  readonly x: (mm: number) => number
  readonly y: number
}): ReactNode {
  const [from, to] = [x(span.fromMm), x(span.toMm)]
  return (
    <g>
      <path d={`M${from} ${y - 5}v12M${to} ${y - 5}v8M${from} ${y}H${to}`} stroke="var(--soft)" fill="none" />
      <path d={`M${from} ${y}l6 -3v6ZM${to} ${y}l-6 -3v6Z`} fill="var(--soft)" />
      <text x={from - 8} y={y + 4.5} textAnchor="end" fontSize={13} fill="var(--soft)">
        {span.text}
      </text>
    </g>
  )
}
