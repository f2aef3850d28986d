import type { ReactNode } from 'react'
import { lengthText, signedCents } from '#shared/quantity/figures.ts'
import type { RulerRow } from '#shared/tuning/tubeRuler.ts'
import { useSettings } from '../../state/settings.ts'
import { rulerWords as words } from '../../words/pictures.ts'
import { Piece, piecesOf } from './Piece.tsx'

const tubePx = 18

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

/** One fingering: its name, its tube on the body, the mark and the gap, and the two figures. */
export function RulerLine({ row, y, left, x, bodyMm, width, hatch, marked }: RulerLineProps): ReactNode {
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
      {piecesOf(row.pieces).map(({ loop, name, valves, fromMm, lengthMm }, i) => (
        <Piece
          key={loop}
          x={x(fromMm)}
          width={x(fromMm + lengthMm) - x(fromMm)}
          y={y}
          height={tubePx}
          name={name}
          short={valves}
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
