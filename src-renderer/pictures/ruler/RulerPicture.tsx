import { type ReactNode, useId } from 'react'
import { lengthText, signedCents } from '#shared/quantity/figures.ts'
import type { RulerRow, TubeRuler } from '#shared/tuning/tubeRuler.ts'
import { useSettings } from '../../state/settings.ts'
import { rulerWords as words } from '../../words/pictures.ts'
import { Hatch, Picture } from '../Picture.tsx'
import { roundTicks, tickText } from '../roundTicks.ts'
import { RulerLine } from './RulerLine.tsx'

interface RulerPictureProps {
  readonly design: string
  readonly ruler: TubeRuler
  readonly width: number
  /** Name of the fingering that is pressed on the screen. */
  readonly marked: string
}

const rowPx = 38
const [head, foot] = [66, 40]
const [bodyPx, figuresPx] = [44, 206]

/** A ruler for each fingering: body, loops end to end, a mark where the tube should end, the gap hatched. */
export function RulerPicture({ design, ruler, width, marked }: RulerPictureProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const hatch = useId()
  const names = ruler.rows.reduce((most, { fingering }) => Math.max(most, fingering.length), 6)
  const left = 14 + 8.2 * names
  const zero = left + bodyPx
  const [least, most] = ruler.reachMm
  const pxPerMm = (width - zero - figuresPx) / Math.max(most - least, 1)
  const x = (mm: number): number => Math.round((zero + (mm - least) * pxPerMm) * 10) / 10
  const height = head + rowPx * ruler.rows.length + foot
  const worst = largest(ruler.rows)
  return (
    <Picture
      name="ruler"
      title={words.title(design)}
      description={words.describe(
        ruler.rows.length,
        worst === null
          ? words.none
          : words.worstOf(worst.fingering, lengthText(worst.missingMm, unit), signedCents(worst.errorCents)),
      )}
      width={width}
      height={height}
    >
      <Hatch id={hatch} />
      <text x={zero} y={18} fontSize={13} fill="var(--soft)">
        {words.beyondBody(unit)}
      </text>
      <text x={width - 92} y={46} fontSize={13} fill="var(--soft)" textAnchor="end">
        {words.difference}
      </text>
      <text x={width - 12} y={46} fontSize={13} fill="var(--soft)" textAnchor="end">
        {words.cents}
      </text>
      {roundTicks(least, most, pxPerMm, unit, 74).map((mm) => (
        <g key={mm}>
          <path d={`M${x(mm)} ${head - 12}V${height - foot + 6}`} stroke="var(--hair)" />
          <text x={x(mm)} y={head - 20} fontSize={13} fill="var(--soft)" textAnchor="middle">
            {tickText(mm, unit)}
          </text>
        </g>
      ))}
      {ruler.rows.map((row, i) => (
        <RulerLine
          key={row.fingering}
          row={row}
          y={head + i * rowPx}
          left={left}
          x={x}
          bodyMm={ruler.bodyMm}
          width={width}
          hatch={hatch}
          marked={row.fingering === marked}
        />
      ))}
      <Key y={height - 12} body={lengthText(ruler.bodyMm, unit)} hatch={hatch} />
    </Picture>
  )
}

function largest(rows: readonly RulerRow[]): RulerRow | null {
  return rows.reduce<RulerRow | null>(
    (worst, row) => (worst === null || Math.abs(row.missingMm) > Math.abs(worst.missingMm) ? row : worst),
    null,
  )
}

function Key({ y, body, hatch }: { readonly y: number; readonly body: string; readonly hatch: string }) {
  return (
    <g fontSize={13} fill="var(--soft)">
      <path d={`M12 ${y - 14}v18`} stroke="var(--brass)" strokeWidth="2.5" />
      <text x={20} y={y}>
        {words.needed}
      </text>
      <rect x={128} y={y - 11} width={24} height={12} fill={`url(#${hatch})`} stroke="var(--brass)" />
      <text x={159} y={y}>
        {words.missing}
      </text>
      <rect
        x={246}
        y={y - 11}
        width={24}
        height={12}
        fill="none"
        stroke="var(--hot)"
        strokeWidth="1.6"
        strokeDasharray="4 2"
      />
      <text x={277} y={y}>
        {words.tooMuch}
      </text>
      <text x={362} y={y}>
        {words.body(body)}
      </text>
    </g>
  )
}
