import { type ReactNode, useId } from 'react'
import { lengthText, signedCents } from '#shared/quantity/figures.ts'
import type { RulerRow, TubeRuler } from '#shared/tuning/tubeRuler.ts'
import { useSettings } from '../../state/settings.ts'
import { rulerWords as words } from '../../words/pictures.ts'
import { Hatch, Picture } from '../Picture.tsx'
import { roundTicks, tickText } from '../roundTicks.ts'
import { Piece, piecesOf } from './Piece.tsx'

interface RulerPictureProps {
  readonly design: string
  readonly ruler: TubeRuler
  readonly width: number
  /** Name of the fingering that is pressed on the screen. */
  readonly marked: string
}

const rowPx = 34
const [head, foot, tubePx] = [66, 40, 14]
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
        {words.missing}
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

interface RulerLineProps {
  readonly row: RulerRow
  readonly y: number
  readonly left: number
  readonly x: (mm: number) => number
  readonly bodyMm: number
  readonly width: number
  readonly hatch: string
  readonly marked: boolean
}

function RulerLine({ row, y, left, x, bodyMm, width, hatch, marked }: RulerLineProps): ReactNode {
  const unit = useSettings((settings) => settings.unit)
  const band = useSettings((settings) => settings.bandCents)
  const [has, needs] = [x(row.lengthMm - bodyMm), x(row.requiredLengthMm - bodyMm)]
  const middle = y + tubePx / 2
  const out = Math.abs(row.errorCents) > band
  return (
    <g>
      {marked ? <rect x={2} y={y - 7} width={3} height={tubePx + 14} fill="var(--brass)" /> : null}
      <text x={10} y={middle + 5} fontWeight={600} fontSize={15}>
        {row.fingering}
      </text>
      <BodyStub left={left} right={x(0)} y={y} />
      {piecesOf(row.pieces).map(({ loop, fromMm, lengthMm }, i) => (
        <Piece
          key={loop}
          x={x(fromMm)}
          width={x(fromMm + lengthMm) - x(fromMm)}
          y={y}
          height={tubePx}
          name={loop}
          shaded={i % 2 === 1}
        />
      ))}
      <Gap has={has} needs={needs} y={y} hatch={hatch} />
      <path d={`M${needs} ${y - 7}v${tubePx + 14}`} stroke="var(--brass)" strokeWidth="2.5" />
      <text x={width - 92} y={middle + 5} textAnchor="end">
        {missingWords(row.missingMm, unit)}
      </text>
      <text
        data-cents={row.fingering}
        x={width - 12}
        y={middle + 5}
        textAnchor="end"
        fontWeight={out ? 600 : 400}
        fill={out ? 'var(--hot)' : 'var(--ink)'}
      >
        {signedCents(row.errorCents)}
      </text>
    </g>
  )
}

/** What is missing in words: short, long, or a fit to what a bench can hold. */
function missingWords(missingMm: number, unit: 'mm' | 'in'): string {
  if (Math.abs(missingMm) < 0.05) return words.fits
  const length = lengthText(Math.abs(missingMm), unit)
  return missingMm > 0 ? words.short(length) : words.long(length)
}

/** The end of the body, broken off: two slanted strokes say that it is not all drawn. */
function BodyStub({ left, right, y }: { readonly left: number; readonly right: number; readonly y: number }) {
  const cut = left + 12
  return (
    <g stroke="var(--ink)" fill="none">
      <path d={`M${left + 4} ${y}H${cut}M${left} ${y + tubePx}H${cut - 4}`} />
      <path d={`M${cut + 6} ${y}H${right}V${y + tubePx}H${cut + 2}`} />
      <path d={`M${cut + 2} ${y - 4}l-6 ${tubePx + 8}M${cut + 8} ${y - 4}l-6 ${tubePx + 8}`} />
    </g>
  )
}

interface GapProps {
  readonly has: number
  readonly needs: number
  readonly y: number
  readonly hatch: string
}

/** Hatched where tube is missing; outlined in the warning ink where there is too much. */
function Gap({ has, needs, y, hatch }: GapProps): ReactNode {
  const width = Math.abs(needs - has)
  if (width < 0.3) return null
  if (needs > has) {
    return <rect x={has} y={y} width={width} height={tubePx} fill={`url(#${hatch})`} stroke="var(--brass)" />
  }
  return (
    <rect
      x={needs}
      y={y - 2}
      width={width}
      height={tubePx + 4}
      fill="none"
      stroke="var(--hot)"
      strokeWidth="1.6"
      strokeDasharray="4 2"
    />
  )
}

function Key({ y, body, hatch }: { readonly y: number; readonly body: string; readonly hatch: string }) {
  return (
    <g fontSize={13} fill="var(--soft)">
      <path d={`M12 ${y - 14}v18`} stroke="var(--brass)" strokeWidth="2.5" />
      <text x={20} y={y}>
        {words.needed}
      </text>
      <rect x={120} y={y - 11} width={24} height={12} fill={`url(#${hatch})`} stroke="var(--brass)" />
      <text x={151} y={y}>
        {words.missing}
      </text>
      <rect
        x={222}
        y={y - 11}
        width={24}
        height={12}
        fill="none"
        stroke="var(--hot)"
        strokeWidth="1.6"
        strokeDasharray="4 2"
      />
      <text x={253} y={y}>
        {words.tooMuch}
      </text>
      <text x={340} y={y}>
        {words.body(body)}
      </text>
    </g>
  )
}
