import type { ReactNode } from 'react'
import { lengthText } from '#shared/quantity/figures.ts'
import { unitMm } from '#shared/quantity/units.ts'
import { roundDown } from '../look/roundScale.ts'
import type { KeyEntry } from '../picture/pictureKey.ts'
import { svgElement } from '../picture/svgElement.ts'
import { boreWords } from '../words/bore.ts'
import type { DrawnBore } from './drawingScale.ts'

interface BoreScaleBarProps {
  readonly drawn: DrawnBore
  readonly unit: 'mm' | 'in'
}

const widestPx = 120

/** A bar of a round length at the drawing's scale, and what of the drawing it holds for. */
export function BoreScaleBar(props: BoreScaleBarProps): ReactNode {
  const { px, text } = scaleBar(props)
  return (
    <p className="scaleBar">
      <svg width={px + 2} height="8" aria-hidden="true">
        <path d={barPath(1, 4, px)} />
      </svg>
      {text}
    </p>
  )
}

/** The same for a saved drawing. */
export function scaleBarEntry(props: BoreScaleBarProps, ink: string): KeyEntry {
  const { px, text } = scaleBar(props)
  return {
    name: text,
    samplePx: px + 2,
    sample: (x, y) => svgElement('path', { d: barPath(x + 1, y, px), fill: 'none', stroke: ink }),
  }
}

function scaleBar({ drawn: { pxPerMm, stretch }, unit }: BoreScaleBarProps) {
  const stepMm = unitMm(unit)
  const units = roundDown(Math.max(widestPx / pxPerMm / stepMm, 1))
  const length = lengthText(units * stepMm, unit, 0)
  const text =
    stretch === 1
      ? `${boreWords.toScale}: ${boreWords.ofLength(length)}`
      : `${boreWords.ofLengthAlong(length)}, ${boreWords.stretchedBy(stretch)}`
  return { px: units * stepMm * pxPerMm, text }
}

function barPath(x: number, y: number, px: number): string {
  return `M${x} ${y - 3}V${y + 3}M${x} ${y}H${x + px}M${x + px} ${y - 3}V${y + 3}`
}
