import { type ReactNode, useId } from 'react'
import { lengthText, signedCents } from '#shared/quantity/figures.ts'
import type { LoopInCompany } from '#shared/tubing/loopInCompany.ts'
import { lengthFigure } from '../../fields/LengthField.tsx'
import { useSettings } from '../../state/settings.ts'
import { companyWords } from '../../words/pictures.ts'
import { Hatch, Picture } from '../Picture.tsx'
import { roundTicks, tickText } from '../roundTicks.ts'

const words = companyWords.growth

interface GrowthPictureProps {
  readonly design: string
  readonly valve: string
  readonly loopMm: number
  readonly rows: readonly LoopInCompany[]
  readonly width: number
}

const height = 316
const [left, right, top, bottom] = [64, 16, 78, 54]

/** A bar for each semitone the instrument is lowered already: the tube that the loop's drop needs there. */
export function GrowthPicture({ design, valve, loopMm, rows, width }: GrowthPictureProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const hatch = useId()
  const mostMm = rows.reduce((most, { neededMm }) => Math.max(most, neededMm), loopMm)
  const pxPerMm = (height - top - bottom) / Math.max(mostMm, 1)
  const y = (mm: number): number => Math.round((height - bottom - mm * pxPerMm) * 10) / 10
  const step = (width - left - right) / rows.length
  const last = rows.at(-1)
  return (
    <Picture
      name="growth"
      title={words.title(valve, design)}
      description={
        last === undefined
          ? ''
          : words.describe(
              lengthText(last.missingMm, unit),
              signedCents(last.errorCents),
              last.loweredSemitones,
            )
      }
      width={width}
      height={height}
    >
      <Hatch id={hatch} />
      <text x={4} y={16} fontSize={13} fill="var(--soft)">
        {words.needs(unit)}
      </text>
      {roundTicks(0, mostMm, pxPerMm, unit, 44).map((mm) => (
        <g key={mm}>
          <path d={`M${left} ${y(mm)}H${width - right}`} stroke="var(--hair)" />
          <text x={left - 8} y={y(mm) + 4.5} fontSize={13} fill="var(--soft)" textAnchor="end">
            {tickText(mm, unit)}
          </text>
        </g>
      ))}
      {rows.map((row, i) => (
        <Bar
          key={row.loweredSemitones}
          row={row}
          x={left + i * step}
          step={step}
          y={y}
          loopMm={loopMm}
          hatch={hatch}
        />
      ))}
      <path d={`M${left} ${height - bottom}H${width - right}`} stroke="var(--ink)" strokeWidth="1.4" />
      <path
        d={`M${left} ${y(loopMm)}H${width - right}`}
        stroke="var(--ink)"
        strokeWidth="1.4"
        strokeDasharray="7 4"
      />
      <Caption loop={words.has(lengthText(loopMm, unit))} />
      <text x={width - right} y={height - 10} fontSize={13} fill="var(--soft)" textAnchor="end">
        {words.axis}
      </text>
      <text x={4} y={height - 10} fontSize={13} fill="var(--soft)">
        {words.above(unit)}
      </text>
    </Picture>
  )
}

/** What the dashed line is. */
function Caption({ loop }: { readonly loop: string }): ReactNode {
  return (
    <g fontSize={13}>
      <path d="M190 12h34" stroke="var(--ink)" strokeWidth="1.4" strokeDasharray="7 4" />
      <text x={232} y={16}>
        {loop}
      </text>
    </g>
  )
}

interface BarProps {
  readonly row: LoopInCompany
  readonly x: number
  readonly step: number
  readonly y: (mm: number) => number
  readonly loopMm: number
  readonly hatch: string
}

function Bar({ row, x, step, y, loopMm, hatch }: BarProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const band = useSettings((settings) => settings.bandCents)
  const width = Math.min(58, 0.7 * step)
  const middle = x + step / 2
  const solidMm = Math.min(loopMm, row.neededMm)
  const out = Math.abs(row.errorCents) > band
  return (
    <g textAnchor="middle">
      <rect
        x={middle - width / 2}
        y={y(solidMm)}
        width={width}
        height={y(0) - y(solidMm)}
        fill="var(--desk)"
        stroke="var(--ink)"
      />
      {row.missingMm * (y(0) - y(1)) < 0.3 ? null : (
        <rect
          x={middle - width / 2}
          y={y(row.neededMm)}
          width={width}
          height={y(loopMm) - y(row.neededMm)}
          fill={`url(#${hatch})`}
          stroke="var(--brass)"
        />
      )}
      <text
        x={middle}
        y={y(Math.max(row.neededMm, loopMm)) - 24}
        fontSize={15}
        fontWeight={600}
        fill={out ? 'var(--hot)' : 'var(--ink)'}
      >
        {signedCents(row.errorCents)}
      </text>
      <text x={middle} y={y(Math.max(row.neededMm, loopMm)) - 7} fontSize={12.5} fill="var(--soft)">
        {lengthFigure(row.missingMm, unit)}
      </text>
      <text x={middle} y={y(0) + 20}>
        {row.loweredSemitones}
      </text>
    </g>
  )
}
