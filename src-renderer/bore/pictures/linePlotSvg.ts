import { plainFigure } from '#shared/quantity/figures.ts'
import { roundValues } from '../../curves/chartScale.ts'
import type { Inks } from '../../curves/inkOfTheme.ts'
import { markerPath } from '../../look/SeriesMark.tsx'
import { seriesLook } from '../../look/seriesLook.ts'
import { dashed, pictureKey, seriesSample } from '../../picture/pictureKey.ts'
import { svgDocument, titlePx } from '../../picture/svgDocument.ts'
import { svgElement as element, escaped, pathFigure, svgWords } from '../../picture/svgElement.ts'
import { boreWords } from '../../words/bore.ts'
import { isFilled } from './filledMarks.ts'
import { type PlotLine, type PlotMark, type PlotModel, valueAt } from './plotModel.ts'

/** Title and size of a plot's picture, px. */
export interface LinePlotSize {
  readonly title: string
  readonly widthPx: number
  /** Of the plot, without title, key and figures. */
  readonly plotPx: number
}

/** Room at the left for the figures of the scale, at the right, over the plot for its unit, under it for hertz, px. */
const leftPx = 58
const rightPx = 22
const unitPx = 34
const hertzPx = 44

const markRadius = 4

/** Where things stand on the picture. */
interface Frame {
  readonly widthPx: number
  readonly topPx: number
  readonly bottomPx: number
  readonly lastHz: number
  readonly x: (hz: number) => number
  readonly y: (value: number) => number
}

/** A plot of curves over frequency as an SVG document: title, key, scales, lines and numbered marks as vectors. */
export function linePlotSvg(model: PlotModel, inks: Inks, { title, widthPx, plotPx }: LinePlotSize): string {
  const entries = model.lines.map(({ key, series }) => ({
    name: key,
    sample: seriesSample(series, inks, isFilled(series)),
  }))
  const key = pictureKey(entries, inks, { widthPx, topPx: titlePx })
  const frame = frameOf(model, widthPx, titlePx + key.heightPx + unitPx, plotPx)
  return svgDocument(title, inks, { widthPx, heightPx: frame.bottomPx + hertzPx }, [
    key.text,
    svgWords(model.axisName, { x: 4, y: frame.topPx - 18, fill: inks.soft }),
    valueScale(model, frame, inks),
    hertzScale(frame, inks),
    ...model.lines.map((line) => lineOf(line, model.hz, frame, inks)),
    ...model.lines.map((line) => marksOf(model, line, frame, inks)),
  ])
}

function frameOf({ hz, range }: PlotModel, widthPx: number, topPx: number, plotPx: number): Frame {
  const lastHz = hz.at(-1) || 1
  const span = range[1] - range[0] || 1
  return {
    widthPx,
    topPx,
    bottomPx: topPx + plotPx,
    lastHz,
    x: (at) => leftPx + (at / lastHz) * (widthPx - leftPx - rightPx),
    y: (value) => topPx + ((range[1] - value) / span) * plotPx,
  }
}

function valueScale({ range, ticks }: PlotModel, { widthPx, topPx, bottomPx, y }: Frame, inks: Inks): string {
  if (range[1] <= range[0]) return ''
  const values = ticks ?? roundValues(range, bottomPx - topPx, 34)
  const digits = decimalsOf(values)
  const lines = values.map((value) => {
    const place = { x1: leftPx, x2: widthPx - rightPx, y1: y(value), y2: y(value), stroke: inks.hair }
    const figure = { x: leftPx - 8, y: y(value) + 4.5, 'text-anchor': 'end', fill: inks.soft }
    return element('line', { class: 'level', ...place }) + svgWords(plainFigure(value, digits), figure)
  })
  return lines.join('\n')
}

function hertzScale({ widthPx, topPx, bottomPx, lastHz, x }: Frame, inks: Inks): string {
  const values = roundValues([0, lastHz], widthPx - leftPx - rightPx, 64)
  const digits = decimalsOf(values)
  const lines = values.map((hz) => {
    const place = { x1: x(hz), x2: x(hz), y1: topPx, y2: bottomPx, stroke: inks.hair }
    const figure = { x: x(hz), y: bottomPx + 18, 'text-anchor': 'middle', fill: inks.soft }
    return element('line', { class: 'frequency', ...place }) + svgWords(plainFigure(hz, digits), figure)
  })
  const unit = { x: widthPx - rightPx, y: bottomPx + 36, 'text-anchor': 'end', fill: inks.soft }
  return [...lines, svgWords(boreWords.hertz, unit)].join('\n')
}

/** Decimals that round values need, at most two. */
function decimalsOf(values: readonly number[]): number {
  const needed = [0, 1].find((digits) =>
    values.every((value) => Math.abs(value - Number(value.toFixed(digits))) < 1e-9),
  )
  return needed ?? 2
}

function lineOf({ key, series, values }: PlotLine, hz: Float64Array, { x, y }: Frame, inks: Inks): string {
  const points = [...values].map((value, i) => `${pathFigure(x(hz[i]!))} ${pathFigure(y(value))}`)
  if (points.length === 0) return ''
  const look = {
    fill: 'none',
    stroke: inks.ofSeries(series),
    'stroke-width': 1.8,
    'stroke-linejoin': 'round',
  }
  const name = element('title', {}, escaped(key))
  return element(
    'path',
    { class: 'line', d: `M${points.join('L')}`, ...look, ...dashed(seriesLook(series).dash) },
    name,
  )
}

/** The marks of a line; those of the first line carry the number of their mode. */
function marksOf(model: PlotModel, { key, series }: PlotLine, frame: Frame, inks: Inks): string {
  const colour = inks.ofSeries(series)
  const isFirst = model.lines[0]?.key === key
  const marks = model.marks.flatMap((mark) => {
    const value = mark.line === key ? (mark.value ?? valueAt(model, key, mark.hz)) : null
    return value === null || mark.hz > frame.lastHz ? [] : [markOf(mark, value, frame, inks, isFirst)]
  })
  if (marks.length === 0) return ''
  const look = { stroke: colour, 'stroke-width': 1.8, fill: isFilled(series) ? colour : inks.paper }
  return element('g', { class: 'marks', ...look }, marks.join(''))
}

function markOf(
  { series, mode, hz }: PlotMark,
  value: number,
  { x, y }: Frame,
  inks: Inks,
  isNumbered: boolean,
): string {
  const place = { transform: `translate(${pathFigure(x(hz))} ${pathFigure(y(value))})` }
  const outline = element('path', { d: markerPath(seriesLook(series).marker, 0, 0, markRadius), ...place })
  if (!isNumbered) return outline
  const number = { x: x(hz), y: y(value) - 9, 'text-anchor': 'middle', fill: inks.ink, stroke: 'none' }
  return outline + svgWords(String(mode), number)
}
