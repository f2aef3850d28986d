import { type ReactNode, useId } from 'react'
import type { InCompany } from '#shared/tuning/inCompany.ts'
import { useSettings } from '../../state/settings.ts'
import { companyWords as words } from '../../words/pictures.ts'
import { Hatch, Picture } from '../Picture.tsx'
import { Piece, piecesOf } from '../ruler/Piece.tsx'
import { type CompanyStep, companySteps, isNothing } from './companySteps.ts'
import { linesOf } from './linesOf.ts'

interface StepsPictureProps {
  readonly design: string
  readonly apart: InCompany
  readonly width: number
}

const [left, right, tubePx] = [34, 16, 16]
const lineHeightPx = 20
/** Room of a step besides its words: the dimension line, the tube, and space. */
const stepPx = 66
const wordPx = 7.6

/** Step by step: the loop alone, the company alone, both, and what fills the gap; every tube to one scale. */
export function StepsPicture({ design, apart, width }: StepsPictureProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const hatch = useId()
  const steps = companySteps(apart, unit)
  const mostMm = steps.reduce((most, step) => Math.max(most, step.requiredMm ?? 0, endOf(step)), 1)
  const pxPerMm = (width - left - right) / mostMm
  const x = (mm: number): number => Math.round((left + mm * pxPerMm) * 10) / 10
  const worded = steps.map((step) => linesOf(step.words, (width - left - right) / wordPx))
  const tops = worded.map((_, i) =>
    worded.slice(0, i).reduce((y, lines) => y + stepPx + lineHeightPx * lines.length, 8),
  )
  const height = (tops.at(-1) ?? 0) + stepPx + lineHeightPx * (worded.at(-1)?.length ?? 1)
  const { fingering } = apart.together
  const title = isNothing(apart.missingMm) ? words.titleInTune : words.title
  return (
    <Picture
      name="company"
      title={title(fingering, design)}
      description={steps.map((step) => step.words).join(' ')}
      width={width}
      height={height}
    >
      <Hatch id={hatch} />
      {steps.map((step, i) => (
        <g key={step.words}>
          <text x={4} y={tops[i]! + 18} fontSize={20} fontWeight={600} fill="var(--brass)">
            {i + 1}
          </text>
          <text y={tops[i]! + 17} fontSize={15}>
            {worded[i]!.map((line, row) => (
              <tspan key={line} x={left} dy={row === 0 ? 0 : lineHeightPx}>
                {line}
                {row < worded[i]!.length - 1 ? ' ' : ''}
              </tspan>
            ))}
          </text>
          <StepTube step={step} x={x} y={tops[i]! + 32 + lineHeightPx * worded[i]!.length} hatch={hatch} />
        </g>
      ))}
    </Picture>
  )
}

function endOf({ pieces }: CompanyStep): number {
  return pieces.reduce((sum, { lengthMm }) => sum + lengthMm, 0)
}

interface StepTubeProps {
  readonly step: CompanyStep
  readonly x: (mm: number) => number
  readonly y: number
  readonly hatch: string
}

/** The tube of a step, its mark, the gap, and the dimension line of the drop it is about. */
function StepTube({ step, x, y, hatch }: StepTubeProps): ReactNode {
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
