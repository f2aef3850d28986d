import type { ReactNode } from 'react'
import { signedCents } from '#shared/quantity/figures.ts'
import { useWidth } from '../../look/useWidth.ts'
import { boreWords } from '../../words/bore.ts'
import type { ModelsColumn } from './modelsColumns.ts'
import { Scrolling } from './Scrolling.tsx'
import { roomyRange, ticksWithin } from './ticks.ts'
import { useHeldRange } from './useHeldRange.ts'

interface ModelsPictureProps {
  readonly columns: readonly ModelsColumn[]
  readonly modes: readonly number[]
  readonly against: 'target' | 'lengthModel'
  readonly bandCents: number
  readonly label: string
}

const size = { left: 46, right: 6, top: 30, bottom: 14, plot: 270, line: 15 }
/** Room for a scroll bar under the picture, px. */
const scrollbarPx = 15
/** Room that a figure takes, px for each character. */
const characterPx = 7.4

/**
 * What the length model and the bore say of every fingering: one bar for the first, which knows no modes, and a
 * numbered mark for each mode of the second.
 */
export function ModelsPicture(props: ModelsPictureProps): ReactNode {
  const [frame, width] = useWidth<HTMLDivElement>()
  const lines = labelLines(props, width)
  const height = size.top + size.plot + size.bottom + lines * size.line
  return (
    <div className="boreFrame" ref={frame}>
      <Scrolling label={props.label} className="boreChart models" height={height + scrollbarPx}>
        {width === 0 ? null : <ModelsSvg {...props} width={width} height={height} stacked={lines > 1} />}
      </Scrolling>
    </div>
  )
}

const narrowestModePx = 5
const besideModesPx = 8

function columnPx({ columns, modes }: ModelsPictureProps, width: number): number {
  const room = (width - size.left - size.right) / Math.max(columns.length, 1)
  return Math.max(room, modes.length * narrowestModePx + besideModesPx)
}

/** Lines that the tallest label takes: one when all fit side by side, else valve under valve. */
function labelLines(props: ModelsPictureProps, width: number): number {
  const longest = props.columns.reduce((most, { fingering }) => Math.max(most, fingering.length), 1)
  if (longest * characterPx + 6 <= columnPx(props, width)) return 1
  return props.columns.reduce((most, { fingering }) => Math.max(most, fingering.split('-').length), 1)
}

interface ModelsSvgProps extends ModelsPictureProps {
  readonly width: number
  readonly height: number
  readonly stacked: boolean
}

function ModelsSvg(props: ModelsSvgProps): ReactNode {
  const { columns, modes, against, bandCents, label, height, stacked } = props
  const wide = columnPx(props, props.width)
  const width = Math.max(props.width, size.left + size.right + wide * columns.length)
  const values = columns.flatMap(({ barCents, marks }) => [barCents ?? 0, ...marks.map(({ cents }) => cents)])
  const band = against === 'target' ? [bandCents, -bandCents] : []
  const key = `${against} ${modes.join()} ${columns.map(({ fingering }) => fingering).join()}`
  const [low, high] = useHeldRange(key, roomyRange([0, ...band, ...values], 20))
  const y = (cents: number): number => size.top + ((high - cents) / (high - low)) * size.plot
  const bottom = size.top + size.plot
  const { values: ticks, digits } = ticksWithin(low, high, 8)
  return (
    <svg width={width} height={height} role="img" aria-label={label}>
      {against === 'target' ? (
        <rect
          className="band"
          x={size.left}
          width={width - size.left - size.right}
          y={y(bandCents)}
          height={y(-bandCents) - y(bandCents)}
        />
      ) : null}
      {ticks.map((tick) => (
        <g key={tick}>
          <path
            className={Math.abs(tick) < 1e-9 ? 'zero' : 'grid'}
            d={`M${size.left} ${y(tick)}H${width - size.right}`}
          />
          <text className="axis" x={size.left - 8} y={y(tick) + 4.5} textAnchor="end">
            {signedCents(tick, digits)}
          </text>
        </g>
      ))}
      <text className="axis" x={4} y={14}>
        {boreWords.modelsAxis[against]}
      </text>
      {columns.map((column, i) => (
        <Column
          key={column.fingering}
          column={column}
          modes={modes}
          leftPx={size.left + i * wide}
          widthPx={wide}
          bottomPx={bottom}
          stacked={stacked}
          y={y}
        />
      ))}
    </svg>
  )
}

/** All modes where their numbers fit side by side, else the sharpest and the flattest. */
function labelledModes(marks: ModelsColumn['marks'], step: number): ReadonlySet<number> {
  const fits = marks.every(({ mode }) => step >= String(mode).length * 7 + 1)
  if (fits) return new Set(marks.map(({ mode }) => mode))
  const byCents = marks.toSorted((a, b) => a.cents - b.cents)
  return new Set([byCents[0], byCents.at(-1)].flatMap((mark) => (mark === undefined ? [] : [mark.mode])))
}

/** Whether a mark lies lower than the line on both of its sides together, so that its number is clear of it below. */
function isBelowItsNeighbours(places: readonly { readonly py: number }[], i: number): boolean {
  const here = places[i]!.py
  const sides = [places[i - 1]?.py, places[i + 1]?.py].filter((py) => py !== undefined)
  return sides.reduce((sum, py) => sum + here - py, 0) > 0
}

interface ColumnProps {
  readonly column: ModelsColumn
  readonly modes: readonly number[]
  readonly leftPx: number
  readonly widthPx: number
  readonly bottomPx: number
  readonly stacked: boolean
  readonly y: (cents: number) => number
}

function Column({ column, modes, leftPx, widthPx, bottomPx, stacked, y }: ColumnProps): ReactNode {
  const { fingering, barCents, marks } = column
  const step = (widthPx - besideModesPx) / Math.max(modes.length, 1)
  const first = modes[0] ?? 1
  const places = marks.map((mark) => ({
    ...mark,
    px: leftPx + besideModesPx / 2 + (mark.mode - first + 0.5) * step,
    py: y(mark.cents),
  }))
  const lines = stacked ? fingering.split('-') : [fingering]
  const labelled = labelledModes(marks, step)
  const radius = Math.min(3.6, 0.8 + 0.45 * step)
  return (
    <g>
      <path className="grid" d={`M${leftPx + widthPx} ${size.top}V${bottomPx}`} />
      {barCents === null ? null : (
        <path className="lengthModel" d={`M${leftPx + 4} ${y(barCents)}H${leftPx + widthPx - 4}`} />
      )}
      <polyline className="boreLine" points={places.map(({ px, py }) => `${px},${py}`).join(' ')} />
      {places.map(({ mode, px, py, cents, shallow }, i) => {
        const above = !isBelowItsNeighbours(places, i)
        return (
          <g key={mode}>
            <title>{boreWords.markTitle(fingering, mode, signedCents(cents))}</title>
            {barCents === null ? null : <path className="stick" d={`M${px} ${py}V${y(barCents)}`} />}
            <circle
              className={shallow ? 'boreMark shallow' : 'boreMark'}
              cx={px}
              cy={py}
              r={shallow ? Math.min(2, radius) : radius}
            />
            {!labelled.has(mode) ? null : (
              <text className="modeNumber" x={px} y={above ? py - 7 : py + 16} textAnchor="middle">
                {mode}
              </text>
            )}
          </g>
        )
      })}
      {lines.map((line, i) => (
        <text
          // biome-ignore lint/suspicious/noArrayIndexKey: a line of a label has no other name
          key={i}
          x={leftPx + widthPx / 2}
          y={bottomPx + 14 + i * size.line}
          textAnchor="middle"
        >
          {line}
        </text>
      ))}
    </g>
  )
}
