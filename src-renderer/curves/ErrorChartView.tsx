import {
  type KeyboardEvent,
  memo,
  type PointerEvent,
  type ReactNode,
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react'
import { signedCents } from '#shared/quantity/figures.ts'
import 'uplot/dist/uPlot.min.css'
import { useTheme } from '../look/useTheme.ts'
import { onLightPaper } from '../picture/lightPaper.ts'
import { PictureOut } from '../picture/PictureOut.tsx'
import { curvesWords as words } from '../words/curves.ts'
import { fitted, labelLinePx, linesOf, narrowestChartPx } from './categoryLabels.ts'
import type { ChartModel, ChartPoint } from './chartModel.ts'
import { chartSvg } from './chartSvg.ts'
import { type ErrorChart, mountErrorChart } from './errorChart.ts'
import { inksAt } from './inkOfTheme.ts'

interface ErrorChartViewProps {
  readonly model: ChartModel
  readonly selected: ChartPoint | null
  readonly onPick: (point: ChartPoint) => void
}

/** Lines of the labels that the chart's usual height has room for. */
const usualLabelLines = 4

/** Least width of a saved picture, and height of its plot, px. */
const leastPicturePx = 720
const picturePlotPx = 320

/** The error chart with what surrounds it: size, theme, pointer, keyboard and what a screen reader hears. */
export const ErrorChartView = memo(function ErrorChartView(props: ErrorChartViewProps): ReactNode {
  const { model, selected, onPick } = props
  const frame = useRef<HTMLDivElement>(null)
  const host = useRef<HTMLDivElement>(null)
  const chart = useRef<ErrorChart>(null)
  const [pointed, setPointed] = useState<ChartPoint | null>(null)
  const [width, setWidth] = useState(0)
  const theme = useTheme()
  // Values change in place; only other categories or designs need another chart.
  const shape = JSON.stringify([model.categories, model.series.map(({ id, series }) => [id, series])])
  const latest = useRef(model)
  latest.current = model
  // biome-ignore lint/correctness/useExhaustiveDependencies: the shape stands for the model's categories
  const [chartWidth, tallerPx] = useMemo(() => roomFor(model, width), [shape, width])

  useLayoutEffect(() => {
    const observer = new ResizeObserver(([entry]) => setWidth(Math.floor(entry?.contentRect.width ?? 0)))
    if (frame.current) observer.observe(frame.current)
    return () => observer.disconnect()
  }, [])

  // biome-ignore lint/correctness/useExhaustiveDependencies: the shape stands for the model's categories and series
  useEffect(() => {
    const element = host.current
    if (element === null || width === 0) return
    const height = element.clientHeight
    const mounted = mountErrorChart(element, latest.current, inksAt(element), { width: chartWidth, height })
    chart.current = mounted
    return () => {
      chart.current = null
      mounted.destroy()
    }
  }, [shape, theme, chartWidth, tallerPx, width === 0])

  useEffect(() => chart.current?.update(model, pointed ?? selected), [model, pointed, selected])

  // In a chart wider than its frame, what is picked in the table comes into sight, as does what the keys lead to.
  const show = (point: ChartPoint): void => {
    const left = chart.current?.place(point)?.left
    if (frame.current !== null && left !== undefined) scrollAside(frame.current, left)
  }
  const [series, category] = [selected?.series, selected?.category]
  // biome-ignore lint/correctness/useExhaustiveDependencies: only another point is shown anew
  useEffect(() => {
    if (series !== undefined && category !== undefined) show({ series, category })
  }, [series, category])

  const key = (event: KeyboardEvent): void => {
    if (event.key === 'Enter' && pointed !== null) onPick(pointed)
    if (event.key === 'Escape') setPointed(null)
    const next = stepped(model, pointed ?? selected, event.key)
    if (next === null) return
    event.preventDefault()
    setPointed(next)
    show(next)
  }
  const at = (event: PointerEvent): ChartPoint | null =>
    chart.current?.pointAt(event.clientX, event.clientY) ?? null
  const place = pointed === null ? null : (chart.current?.place(pointed) ?? null)

  const drawn = (): string => {
    const size = { widthPx: Math.max(chartWidth, leastPicturePx), plotPx: picturePlotPx }
    return onLightPaper(() => chartSvg(model, inksAt(host.current ?? document.body), size))
  }
  return (
    <PictureOut name={model.title} svg={drawn}>
      <div className="chartFrame" ref={frame}>
        {/* biome-ignore lint/a11y/useSemanticElements: a chart is no fieldset */}
        <div
          className="chart"
          role="group"
          aria-roledescription={words.chart}
          aria-label={words.chartLabel(model.title)}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: its values are read and picked with the keyboard
          tabIndex={0}
          onKeyDown={key}
          onBlur={() => setPointed(null)}
          onPointerMove={(event) => setPointed((present) => sameOr(present, at(event)))}
          onPointerLeave={() => setPointed(null)}
          onClick={(event) => {
            const point = chart.current?.pointAt(event.clientX, event.clientY)
            if (point) onPick(point)
          }}
        >
          <div
            className="plot"
            ref={host}
            style={{ width: chartWidth || undefined, height: `calc(var(--plotHeight) + ${tallerPx}px)` }}
          />
          {place === null || pointed === null ? null : (
            <Tip model={model} point={pointed} {...place} width={chartWidth} />
          )}
        </div>
        <p className="unseen" aria-live="polite">
          {pointed === null ? '' : spoken(model, pointed)}
        </p>
      </div>
    </PictureOut>
  )
})

/** Room that is kept in sight on both sides of a point, CSS px. */
const besidePointPx = 80

function scrollAside(frame: HTMLElement, leftPx: number): void {
  const { scrollLeft, clientWidth } = frame
  if (leftPx < scrollLeft) frame.scrollLeft = leftPx - besidePointPx
  else if (leftPx > scrollLeft + clientWidth) frame.scrollLeft = leftPx - clientWidth + besidePointPx
}

/** Width of the chart, and how much taller than usual its labels make it, CSS px. */
function roomFor({ categories }: ChartModel, widthPx: number): readonly [number, number] {
  const chartPx = Math.max(widthPx, narrowestChartPx(categories))
  return [chartPx, labelLinePx * Math.max(0, linesOf(fitted(categories, chartPx)) - usualLabelLines)]
}

function sameOr(present: ChartPoint | null, next: ChartPoint | null): ChartPoint | null {
  const same = present?.category === next?.category && present?.series === next?.series
  return same ? present : next
}

/** The point that an arrow key leads to; `null` for other keys. */
function stepped(model: ChartModel, from: ChartPoint | null, key: string): ChartPoint | null {
  const last = { series: model.series.length - 1, category: model.categories.length - 1 }
  if (last.series < 0 || last.category < 0) return null
  const start = from ?? { series: 0, category: -1 }
  const within = (value: number, most: number): number => Math.min(most, Math.max(0, value))
  switch (key) {
    case 'ArrowRight':
      return { ...start, category: within(start.category + 1, last.category) }
    case 'ArrowLeft':
      return { ...start, category: within(start.category - 1, last.category) }
    case 'ArrowDown':
      return {
        category: within(start.category, last.category),
        series: within(start.series + 1, last.series),
      }
    case 'ArrowUp':
      return {
        category: within(start.category, last.category),
        series: within(start.series - 1, last.series),
      }
    case 'Home':
      return { ...start, category: 0 }
    case 'End':
      return { ...start, category: last.category }
    default:
      return null
  }
}

function spoken(model: ChartModel, { series, category }: ChartPoint): string {
  const line = model.series[series]
  const value = line?.values[category]
  const label = model.categories[category]?.label ?? ''
  if (line === undefined || value === null || value === undefined) return words.noValue(label)
  return words.value(line.name, line.notes[category] ?? label, signedCents(value))
}

interface TipProps {
  readonly model: ChartModel
  readonly point: ChartPoint
  readonly left: number
  readonly top: number
  readonly width: number
}

function Tip({ model, point, left, top, width }: TipProps): ReactNode {
  const rows = useMemo(
    () =>
      model.series.flatMap(({ id, name, values, notes }, i) => {
        const value = values[point.category]
        return value === null || value === undefined
          ? []
          : [{ id, name, value, note: notes[point.category], i }]
      }),
    [model, point],
  )
  const onLeft = left > width - 260
  return (
    <div
      className="tip"
      aria-hidden="true"
      style={{ top: Math.max(0, top - 14), ...(onLeft ? { right: width - left + 16 } : { left: left + 16 }) }}
    >
      <b>{model.categories[point.category]?.label}</b>
      {rows.map(({ id, name, value, note, i }) => (
        <p key={id} className={i === point.series ? 'on' : undefined}>
          <span>
            {name}
            {note ? <i> {note}</i> : null}
          </span>
          <b>{signedCents(value)}</b>
        </p>
      ))}
    </div>
  )
}
