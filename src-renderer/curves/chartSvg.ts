import { signedCents } from '#shared/quantity/figures.ts'
import { markerPath } from '../look/SeriesMark.tsx'
import { seriesLook } from '../look/seriesLook.ts'
import { dashed, pictureKey, seriesSample } from '../picture/pictureKey.ts'
import { svgDocument, titlePx } from '../picture/svgDocument.ts'
import { svgElement as element, escaped, pathFigure, svgWords } from '../picture/svgElement.ts'
import { curvesWords } from '../words/curves.ts'
import { fitted, labelLinePx, linesOf, narrowestChartPx } from './categoryLabels.ts'
import { type ChartModel, type ChartSeries, centsRange } from './chartModel.ts'
import { roundValues } from './chartScale.ts'
import type { Inks } from './inkOfTheme.ts'

/** Room at the left for the figures of the scale, at the right, and for the plot itself, px. */
const leftPx = 58
const rightPx = 14
const unitPx = 24

/** Size of a chart's picture, px; it becomes wider where its labels need the room. */
export interface ChartSize {
  readonly widthPx: number
  /** Of the plot, without title, key and labels. */
  readonly plotPx: number
  /** Ends of the cents axis; as the values want them when absent. */
  readonly range?: readonly [number, number]
}

/** Where things stand on the picture. */
interface Frame {
  readonly widthPx: number
  readonly topPx: number
  readonly bottomPx: number
  readonly range: readonly [number, number]
  readonly x: (category: number) => number
  readonly y: (cents: number) => number
}

/** The error chart as an SVG document: title, key, scale, tolerance band, doubt, lines and markers as vectors. */
export function chartSvg(model: ChartModel, inks: Inks, size: ChartSize): string {
  const widthPx = Math.max(size.widthPx, narrowestChartPx(model.categories))
  const labels = fitted(model.categories, widthPx)
  const entries = model.series.map(({ name, series }) => ({ name, sample: seriesSample(series, inks) }))
  const key = pictureKey(entries, inks, { widthPx, topPx: titlePx })
  const topPx = titlePx + key.heightPx + unitPx
  const frame = frameOf(model, widthPx, topPx, size)
  const heightPx = frame.bottomPx + 14 + labelLinePx * linesOf(labels)
  const parts = [
    key.text,
    svgWords(curvesWords.axis, { x: 4, y: topPx - 10, fill: inks.soft }),
    bandOf(model, frame, inks),
    scaleOf(frame, inks),
    doubtOf(model, frame, inks),
    ...model.series.map((series) => lineOf(series, frame, inks)),
    ...model.series.map((series, order) => markersOf(series, model.series.length - 1 - order, frame, inks)),
    labelsOf(labels, frame, inks),
  ]
  return svgDocument(model.title, inks, { widthPx, heightPx }, parts)
}

function frameOf(
  model: ChartModel,
  widthPx: number,
  topPx: number,
  { plotPx, range = centsRange(model, null) }: ChartSize,
): Frame {
  const step = (widthPx - leftPx - rightPx) / Math.max(model.categories.length, 1)
  return {
    widthPx,
    topPx,
    bottomPx: topPx + plotPx,
    range,
    x: (category) => leftPx + (category + 0.5) * step,
    y: (cents) => topPx + ((range[1] - cents) / (range[1] - range[0])) * plotPx,
  }
}

function bandOf({ bandCents }: ChartModel, { widthPx, y }: Frame, inks: Inks): string {
  const height = y(-bandCents) - y(bandCents)
  const place = { x: leftPx, y: y(bandCents), width: widthPx - leftPx - rightPx, height }
  const [, colour = inks.band, alpha] = /^(#[0-9a-f]{6})([0-9a-f]{2})$/i.exec(inks.band) ?? []
  const see = alpha === undefined ? {} : { 'fill-opacity': Number.parseInt(alpha, 16) / 255 }
  return element('rect', { class: 'band', ...place, fill: colour, ...see })
}

function scaleOf({ range, topPx, bottomPx, widthPx, y }: Frame, inks: Inks): string {
  const values = roundValues(range, bottomPx - topPx, 34)
  const whole = values.every(Number.isInteger)
  const right = widthPx - rightPx
  const lines = values.map((cents) => {
    const stroke = cents === 0 ? { stroke: inks.ink, 'stroke-width': 1.4 } : { stroke: inks.hair }
    const figure = { x: leftPx - 8, y: y(cents) + 4.5, 'text-anchor': 'end', fill: inks.soft }
    const line = element('line', { x1: leftPx, x2: right, y1: y(cents), y2: y(cents), ...stroke })
    return line + svgWords(signedCents(cents, whole ? 0 : 1), figure)
  })
  return lines.join('\n')
}

/** Half-width of the caps at the ends of a band, px. */
const capPx = 3.5

function doubtOf({ doubt }: ChartModel, { x, y }: Frame, inks: Inks): string {
  if (doubt === undefined) return ''
  const places = doubt.lowest.flatMap((low, i) => {
    const high = doubt.highest[i]
    return low === null || high === null || high === undefined
      ? []
      : [{ x: x(i), low: y(low), high: y(high) }]
  })
  if (places.length === 0) return ''
  const colour = inks.ofSeries(doubt.series)
  const upper = places.map((place) => `${pathFigure(place.x)} ${pathFigure(place.high)}`)
  const lower = places.toReversed().map((place) => `${pathFigure(place.x)} ${pathFigure(place.low)}`)
  const caps = places.map(({ x: at, low, high }) => {
    const cap = `M${pathFigure(at - capPx)} ${pathFigure(low)}h${2 * capPx}M${pathFigure(at - capPx)} ${pathFigure(high)}h${2 * capPx}`
    return `M${pathFigure(at)} ${pathFigure(low)}V${pathFigure(high)}${cap}`
  })
  return [
    element('path', { d: `M${[...upper, ...lower].join('L')}Z`, fill: colour, 'fill-opacity': 0.16 }),
    element('path', { d: caps.join(''), fill: 'none', stroke: colour }),
  ].join('\n')
}

/** A design's line; it is broken where the design has no value. */
function lineOf({ name, series, values }: ChartSeries, { x, y }: Frame, inks: Inks): string {
  let pen = 'M'
  const data = values.map((cents, i) => {
    if (cents === null) {
      pen = 'M'
      return ''
    }
    const part = `${pen}${pathFigure(x(i))} ${pathFigure(y(cents))}`
    pen = 'L'
    return part
  })
  const look = { fill: 'none', stroke: inks.ofSeries(series), 'stroke-width': 2 }
  const title = element('title', {}, escaped(name))
  return element(
    'path',
    { class: 'line', d: data.join(''), ...look, ...dashed(seriesLook(series).dash) },
    title,
  )
}

/** Every value's marker; those of earlier designs are larger, so that ones in the same place stay in sight. */
function markersOf(
  { series, values, notes }: ChartSeries,
  under: number,
  { x, y }: Frame,
  inks: Inks,
): string {
  const radius = 4 + 1.3 * Math.min(4, under)
  const { marker } = seriesLook(series)
  const markers = values.map((cents, i) => {
    if (cents === null) return ''
    const said = element('title', {}, escaped(`${notes[i] ?? ''} ${signedCents(cents)}`.trim()))
    const place = { transform: `translate(${pathFigure(x(i))} ${pathFigure(y(cents))})` }
    return element('path', { d: markerPath(marker, 0, 0, radius), ...place }, said)
  })
  const look = { fill: inks.paper, stroke: inks.ofSeries(series), 'stroke-width': 2 }
  return element('g', { class: 'markers', ...look }, markers.join(''))
}

function labelsOf(labels: readonly string[], { x, bottomPx }: Frame, inks: Inks): string {
  const lines = labels.flatMap((label, i) =>
    label.split('\n').map((part, line) => svgWords(part, { x: x(i), y: bottomPx + 18 + labelLinePx * line })),
  )
  return element('g', { fill: inks.ink, 'text-anchor': 'middle' }, lines.join(''))
}
