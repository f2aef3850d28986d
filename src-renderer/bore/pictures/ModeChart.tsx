import type { ReactNode } from 'react'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { markerPath } from '../../look/SeriesMark.tsx'
import { seriesLook } from '../../look/seriesLook.ts'
import { useWidth } from '../../look/useWidth.ts'
import { PictureOut } from '../../picture/PictureOut.tsx'
import { seriesSample } from '../../picture/pictureKey.ts'
import { boreWords } from '../../words/bore.ts'
import { isFilled } from './filledMarks.ts'
import { roomyRange, ticksWithin } from './ticks.ts'
import { useHeldRange } from './useHeldRange.ts'

/** A value of each mode, for one fingering. */
export interface ModeLine {
  readonly key: string
  readonly series: number
  readonly points: readonly { readonly mode: number; readonly value: number; readonly shallow: boolean }[]
}

interface ModeChartProps {
  readonly label: string
  /** Of the picture when it is saved. */
  readonly title: string
  readonly axisName: string
  readonly lines: readonly ModeLine[]
  readonly firstMode: number
  readonly lastMode: number
  /** Draws zero as a line of its own, and always shows it. */
  readonly zero: boolean
  /** Narrowest range of the values. */
  readonly least: number
}

const size = { height: 300, left: 56, right: 10, top: 28, bottom: 40 }

/** Values by mode: a line for each fingering, told apart by colour, dash and marker. */
export function ModeChart(props: ModeChartProps): ReactNode {
  const [frame, width] = useWidth<HTMLDivElement>()
  const { title, lines } = props
  return (
    <PictureOut
      name={title}
      keyOf={(inks) =>
        lines.map(({ key, series }) => ({ name: key, sample: seriesSample(series, inks, isFilled(series)) }))
      }
    >
      <div className="boreChart" ref={frame} style={{ height: size.height }}>
        {width === 0 ? null : <ModeSvg {...props} width={width} />}
      </div>
    </PictureOut>
  )
}

function ModeSvg(props: ModeChartProps & { readonly width: number }): ReactNode {
  const { label, axisName, lines, firstMode, lastMode, zero, least, width } = props
  const values = lines.flatMap(({ points }) => points.map(({ value }) => value))
  const key = `${axisName} ${firstMode} ${lastMode} ${lines.map((line) => line.key).join()}`
  const [low, high] = useHeldRange(key, roomyRange(zero ? [0, ...values] : values, least))
  const { values: ticks, digits } = ticksWithin(low, high, 8)
  const y = (value: number): number =>
    size.top + ((high - value) / (high - low)) * (size.height - size.top - size.bottom)
  const step = (width - size.left - size.right) / (lastMode - firstMode + 1)
  const x = (mode: number): number => size.left + (mode - firstMode + 0.5) * step
  const modes = Array.from({ length: lastMode - firstMode + 1 }, (_, i) => firstMode + i)
  return (
    <svg width={width} height={size.height} role="img" aria-label={label}>
      {ticks.map((tick) => (
        <g key={tick}>
          <path
            className={zero && Math.abs(tick) < 1e-9 ? 'zero' : 'grid'}
            d={`M${size.left} ${y(tick)}H${width - size.right}`}
          />
          <text className="axis" x={size.left - 8} y={y(tick) + 4.5} textAnchor="end">
            {zero ? signedCents(tick, digits) : plainFigure(tick, digits)}
          </text>
        </g>
      ))}
      {modes.map((mode) => (
        <text key={mode} x={x(mode)} y={size.height - 20} textAnchor="middle">
          {mode}
        </text>
      ))}
      <text className="axis" x={width - size.right} y={size.height - 4} textAnchor="end">
        {boreWords.mode}
      </text>
      <text className="axis" x={4} y={14}>
        {axisName}
      </text>
      {lines.map(({ key: name, series, points }) => {
        const { colour, dash, marker } = seriesLook(series)
        const places = points.map((point) => ({ ...point, px: x(point.mode), py: y(point.value) }))
        return (
          <g key={name} style={{ stroke: `var(${colour})`, color: `var(${colour})` }}>
            <polyline
              points={places.map(({ px, py }) => `${px},${py}`).join(' ')}
              strokeWidth="2"
              strokeDasharray={dash.join(' ')}
            />
            {places.map(({ mode, px, py, shallow }) => (
              <path
                key={mode}
                className={isFilled(series) ? 'marker filled' : 'marker'}
                d={markerPath(marker, px, py, shallow ? 2 : 4.5)}
              />
            ))}
          </g>
        )
      })}
    </svg>
  )
}
