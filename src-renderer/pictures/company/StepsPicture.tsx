import { type ReactNode, useId } from 'react'
import type { InCompany } from '#shared/tuning/inCompany.ts'
import { useSettings } from '../../state/settings.ts'
import { companyWords as words } from '../../words/pictures.ts'
import { Hatch, Picture } from '../Picture.tsx'
import { companySteps, isNothing } from './companySteps.ts'
import { linesOf } from './linesOf.ts'
import { endOf, StepTube } from './StepTube.tsx'

interface StepsPictureProps {
  readonly design: string
  readonly apart: InCompany
  readonly width: number
}

const [left, right] = [34, 16]
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
