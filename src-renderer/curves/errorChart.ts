import uPlot from 'uplot'
import { signedCents } from '#shared/quantity/figures.ts'
import { seriesLook } from '../look/seriesLook.ts'
import { curvesWords } from '../words/curves.ts'
import { fitted, labelLinePx, linesOf } from './categoryLabels.ts'
import { categoryStrip } from './categoryStrip.ts'
import { type ChartModel, type ChartPoint, centsRange } from './chartModel.ts'
import { drawDoubtBands } from './doubtBands.ts'
import type { Inks } from './inkOfTheme.ts'
import { type MarkerImages, markerImages } from './markerImages.ts'

/** A mounted chart: new values in place, another size, gone. */
export interface ErrorChart {
  readonly update: (model: ChartModel, selected: ChartPoint | null) => void
  readonly resize: (width: number, height: number) => void
  /** The point of a series nearest to a place in the chart's page coordinates. */
  readonly pointAt: (clientX: number, clientY: number) => ChartPoint | null
  readonly place: (point: ChartPoint) => { readonly left: number; readonly top: number } | null
  readonly destroy: () => void
}

const markerRadius = 4
/** Markers of earlier designs are drawn this much larger each, so that ones in the same place stay in sight. */
const markerGrowth = 1.3

/**
 * Mounts the error chart: categories as indices along x, cents along y, the tolerance band and the zero line
 * drawn behind. A change of categories or series needs a new chart; new values do not.
 */
export function mountErrorChart(
  host: HTMLElement,
  first: ChartModel,
  inks: Inks,
  size: { width: number; height: number },
): ErrorChart {
  let model = first
  let selected: ChartPoint | null = null
  let range: readonly [number, number] | null = null
  const count = first.categories.length
  const labels = fitted(first.categories, size.width)
  const strip = categoryStrip(labels, inks)
  const markerOf = markerImages(inks)
  const plot = new uPlot(
    {
      ...size,
      cursor: { show: false },
      legend: { show: false },
      padding: [28, 14, 0, 0],
      scales: {
        x: { time: false, range: () => [-0.5, Math.max(count, 1) - 0.5] },
        y: {
          range: () => {
            range = centsRange(model, range)
            return [range[0], range[1]]
          },
        },
      },
      axes: [categoryAxis(labels, inks), centsAxis(inks)],
      series: [{}, ...first.series.map(({ series }) => seriesOptions(series, inks))],
      hooks: {
        drawAxes: [
          (u) => {
            u.ctx.drawImage(strip(u), 0, u.bbox.top + u.bbox.height)
            drawBehind(u, model, inks)
          },
        ],
        draw: [(u) => drawInFront(u, model, selected, inks, markerOf)],
      },
    },
    dataOf(first),
    host,
  )
  plot.root.querySelector('canvas')?.setAttribute('aria-hidden', 'true')

  return {
    update: (next, point) => {
      model = next
      selected = point
      plot.setData(dataOf(next))
    },
    resize: (width, height) => plot.setSize({ width, height }),
    pointAt: (clientX, clientY) => nearestPoint(plot, model, clientX, clientY),
    place: (point) => placeOf(plot, model, point),
    destroy: () => plot.destroy(),
  }
}

function dataOf({ categories, series }: ChartModel): uPlot.AlignedData {
  return [categories.map((_, i) => i), ...series.map(({ values }) => [...values])]
}

/** The room below the plot; the labels themselves are an image. */
function categoryAxis(labels: readonly string[], inks: Inks): uPlot.Axis {
  return {
    // Another font than the other axis has would be looked up anew with every drawing.
    font: `13px ${inks.font}`,
    grid: { show: false },
    ticks: { show: false },
    splits: () => [],
    values: () => [],
    size: 14 + labelLinePx * linesOf(labels),
  }
}

function centsAxis(inks: Inks): uPlot.Axis {
  return {
    stroke: inks.soft,
    font: `13px ${inks.font}`,
    grid: { stroke: inks.hair, width: 1 },
    ticks: { show: false },
    space: 34,
    size: 58,
    gap: 8,
    values: (_u, splits) => splits.map((split) => signedCents(split, Number.isInteger(split) ? 0 : 1)),
  }
}

function seriesOptions(series: number, inks: Inks): uPlot.Series {
  const { dash } = seriesLook(series)
  return { stroke: inks.ofSeries(series), width: 2, dash: [...dash], points: { show: false } }
}

function drawBehind(plot: uPlot, { bandCents, doubt }: ChartModel, inks: Inks): void {
  const { ctx, bbox } = plot
  const y = (cents: number): number => plot.valToPos(cents, 'y', true)
  ctx.save()
  ctx.fillStyle = inks.band
  ctx.fillRect(bbox.left, y(bandCents), bbox.width, y(-bandCents) - y(bandCents))
  ctx.strokeStyle = inks.ink
  ctx.lineWidth = 1.4 * devicePixelRatio
  ctx.beginPath()
  ctx.moveTo(bbox.left, y(0))
  ctx.lineTo(bbox.left + bbox.width, y(0))
  ctx.stroke()
  ctx.restore()
  if (doubt !== undefined) drawDoubtBands(plot, doubt, inks)
}

function drawInFront(
  plot: uPlot,
  model: ChartModel,
  selected: ChartPoint | null,
  inks: Inks,
  markerOf: MarkerImages,
): void {
  const { ctx } = plot
  ctx.save()
  // The lines' dashes would otherwise break the markers' outlines.
  ctx.setLineDash([])
  ctx.lineWidth = 2 * devicePixelRatio
  const across = model.categories.map((_, i) => plot.valToPos(i, 'x', true))
  for (const [order, { series, values }] of model.series.entries()) {
    const marker = markerOf(
      series,
      markerRadius + markerGrowth * Math.min(4, model.series.length - 1 - order),
    )
    const half = marker.width / 2
    for (let i = 0; i < values.length; i++) {
      const value = values[i]
      if (value === null || value === undefined) continue
      const y = plot.valToPos(value, 'y', true)
      ctx.drawImage(marker, Math.round(across[i]! - half), Math.round(y - half))
    }
  }
  drawSelected(plot, model, selected, inks)
  ctx.fillStyle = inks.soft
  ctx.font = `${13 * devicePixelRatio}px ${inks.font}`
  ctx.textAlign = 'left'
  ctx.textBaseline = 'top'
  ctx.fillText(curvesWords.axis, 4 * devicePixelRatio, 4 * devicePixelRatio)
  ctx.restore()
}

function drawSelected(plot: uPlot, model: ChartModel, selected: ChartPoint | null, inks: Inks): void {
  const value = selected === null ? undefined : model.series[selected.series]?.values[selected.category]
  if (selected === null || value === null || value === undefined) return
  const { ctx } = plot
  ctx.strokeStyle = inks.brass
  ctx.beginPath()
  const [x, y] = [plot.valToPos(selected.category, 'x', true), plot.valToPos(value, 'y', true)]
  ctx.arc(x, y, 9 * devicePixelRatio, 0, 2 * Math.PI)
  ctx.stroke()
}

function placeOf(
  plot: uPlot,
  model: ChartModel,
  { series, category }: ChartPoint,
): { left: number; top: number } | null {
  const value = model.series[series]?.values[category]
  if (value === null || value === undefined) return null
  const left = plot.valToPos(category, 'x') + plot.over.offsetLeft
  return { left, top: plot.valToPos(value, 'y') + plot.over.offsetTop }
}

/** Farther than this from every marker, a pointer is at none, CSS px. */
const reachPx = 40

function nearestPoint(plot: uPlot, model: ChartModel, clientX: number, clientY: number): ChartPoint | null {
  const box = plot.over.getBoundingClientRect()
  const [left, top] = [clientX - box.left, clientY - box.top]
  const category = Math.round(plot.posToVal(left, 'x'))
  let nearest: ChartPoint | null = null
  let least = Number.POSITIVE_INFINITY
  for (const [series, { values }] of model.series.entries()) {
    const value = values[category]
    if (value === null || value === undefined) continue
    const distance = Math.hypot(plot.valToPos(value, 'y') - top, plot.valToPos(category, 'x') - left)
    if (distance < least) [nearest, least] = [{ series, category }, distance]
  }
  return least <= reachPx * 2 ? nearest : null
}
