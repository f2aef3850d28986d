import { Fragment, type ReactNode } from 'react'
import { noteName } from '#shared/pitch/noteName.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type { HarmonicRow } from '#shared/tuning/harmonicSeries.ts'
import { useSettings } from '../../state/settings.ts'
import { at, round } from './places.ts'

interface HarmonicLineProps {
  readonly row: HarmonicRow
  /** The note of the scale that is nearest to it. */
  readonly midi: number
  readonly far: boolean
  readonly top: number
  readonly foot: number
  /** Whether the hertz make way for the cents. */
  readonly isNarrow: boolean
}

/** One harmonic: its figures, and the line from its place in frequency to its place in pitch. */
export function HarmonicLine({ row, midi, far, top, foot, isNarrow }: HarmonicLineProps): ReactNode {
  const spelling = useSettings((settings) => settings.spelling)
  const ink = far ? 'var(--hot)' : 'var(--brass)'
  const [x, end] = [round(top), round(foot)]
  return (
    <Fragment>
      <text x={x} y={at.number} textAnchor="middle" fontSize={17} fontWeight={600}>
        {row.harmonic}
      </text>
      <text x={x} y={at.note} textAnchor="middle">
        {noteName(midi, spelling)}
      </text>
      <text
        data-cents={row.harmonic}
        x={x}
        y={isNarrow && row.harmonic % 2 === 0 ? at.hertz : at.cents}
        textAnchor="middle"
        fontSize={13}
        fontWeight={far ? 600 : 400}
        fill={far ? 'var(--hot)' : 'var(--ink)'}
      >
        {signedCents(row.centsFromScale)}
      </text>
      {isNarrow ? null : (
        <text x={x} y={at.hertz} textAnchor="middle" fontSize={12.5} fill="var(--soft)">
          {plainFigure(row.hz, 0)}
        </text>
      )}
      <path
        d={`M${x} ${at.frequency - 14}V${at.frequency + 12}L${end} ${at.pitch - 16}V${at.pitch}`}
        fill="none"
        stroke={ink}
        strokeWidth={far ? 2 : 1.4}
      />
      <circle cx={end} cy={at.pitch} r={far ? 4.5 : 3.5} fill={ink} stroke="var(--paper)" />
    </Fragment>
  )
}
