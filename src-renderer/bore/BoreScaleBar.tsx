import type { ReactNode } from 'react'
import { lengthText } from '#shared/quantity/figures.ts'
import { boreWords } from '../words/bore.ts'
import type { DrawnBore } from './drawingScale.ts'

interface BoreScaleBarProps {
  readonly drawn: DrawnBore
  readonly unit: 'mm' | 'in'
}

const widestPx = 120

/** A bar of a round length at the drawing's scale, and what of the drawing it holds for. */
export function BoreScaleBar({ drawn: { pxPerMm, stretch }, unit }: BoreScaleBarProps): ReactNode {
  const stepMm = unit === 'mm' ? 1 : 25.4
  const most = widestPx / pxPerMm / stepMm
  const power = 10 ** Math.floor(Math.log10(Math.max(most, 1)))
  const units = [5, 2, 1].map((factor) => factor * power).find((each) => each <= most) ?? 1
  const px = units * stepMm * pxPerMm
  const length = lengthText(units * stepMm, unit, 0)
  return (
    <p className="scaleBar">
      <svg width={px + 2} height="8" aria-hidden="true">
        <path d={`M1 1V7M1 4H${px + 1}M${px + 1} 1V7`} />
      </svg>
      {stretch === 1
        ? `${boreWords.toScale}: ${boreWords.ofLength(length)}`
        : `${boreWords.ofLengthAlong(length)}, ${boreWords.stretchedBy(stretch)}`}
    </p>
  )
}
