import uPlot from 'uplot'
import { plainFigure } from '#shared/quantity/figures.ts'
import type { Inks } from '../../curves/inkOfTheme.ts'
import { markerPath } from '../../look/SeriesMark.tsx'
import { seriesLook } from '../../look/seriesLook.ts'
import { boreWords } from '../../words/bore.ts'
import { isFilled } from './filledMarks.ts'
import { type PlotModel, valueAt } from './plotModel.ts'

/** A mounted plot. */
export interface LinePlot {
  readonly update: (model: PlotModel, pointedHz: number | null) => void
  readonly hzAt: (clientX: number) => number | null
  readonly destroy: () => void
}

/** Mounts a plot of curves over frequency. Other curves need another plot; new values do not. */
export function mountLinePlot(
  host: HTMLElement,
  first: PlotModel,
  inks: Inks,
  size: { readonly width: number; readonly height: number },
): LinePlot {
  let model = first
  let pointed: number | null = null
  const plot = new uPlot(
    {
      ...size,
      cursor: { show: false },
      legend: { show: false },
      padding: [28, 26, 0, 0],
      scales: {
        x: { time: false, range: () => [0, model.hz.at(-1) ?? 1] },
        y: { range: () => [model.range[0], model.range[1]] },
      },
      axes: [hertzAxis(inks), valueAxis(inks, () => model.ticks)],
      series: [
        {},
        ...first.lines.map(({ series }) => ({
          stroke: inks.ofSeries(series),
          width: 1.8,
          dash: [...seriesLook(series).dash],
          points: { show: false },
        })),
      ],
      hooks: { draw: [(u) => drawInFront(u, model, pointed, inks)] },
    },
    dataOf(first),
    host,
  )
  plot.root.querySelector('canvas')?.setAttribute('aria-hidden', 'true')
  return {
    update: (next, hz) => {
      model = next
      pointed = hz
      plot.setData(dataOf(next))
    },
    hzAt: (clientX) => {
      const box = plot.over.getBoundingClientRect()
      const hz = plot.posToVal(clientX - box.left, 'x')
      return hz >= 0 && hz <= (model.hz.at(-1) ?? 0) ? hz : null
    },
    destroy: () => plot.destroy(),
  }
}

function dataOf({ hz, lines }: PlotModel): uPlot.AlignedData {
  return [hz, ...lines.map(({ values }) => values)]
}

function hertzAxis(inks: Inks): uPlot.Axis {
  return {
    stroke: inks.soft,
    font: `13px ${inks.font}`,
    grid: { stroke: inks.hair, width: 1 },
    ticks: { show: false },
    space: 64,
    size: 26,
    gap: 6,
    // The unit stands with the last figure: beside it nothing is in its way.
    values: (_u, splits) =>
      splits.map((hz, i) => `${plainFigure(hz, 0)}${i < splits.length - 1 ? '' : ` ${boreWords.hertz}`}`),
  }
}

function valueAxis(inks: Inks, ticks: () => readonly number[] | undefined): uPlot.Axis {
  return {
    stroke: inks.soft,
    font: `13px ${inks.font}`,
    grid: { stroke: inks.hair, width: 1 },
    ticks: { show: false },
    space: 34,
    size: 50,
    gap: 8,
    values: (_u, splits) =>
      splits.map((value) =>
        plainFigure(value, Number.isInteger(value) ? 0 : value * 10 === Math.round(value * 10) ? 1 : 2),
      ),
    ...(ticks() === undefined ? {} : { splits: () => [...(ticks() ?? [])] }),
  }
}

const markRadius = 4

function drawInFront(plot: uPlot, model: PlotModel, pointed: number | null, inks: Inks): void {
  const { ctx, bbox } = plot
  ctx.save()
  ctx.setLineDash([])
  ctx.lineWidth = 1.8 * devicePixelRatio
  ctx.font = `${12.5 * devicePixelRatio}px ${inks.font}`
  ctx.textAlign = 'center'
  ctx.textBaseline = 'bottom'
  const firstLine = model.lines[0]?.key
  for (const { line, series, mode, hz, value } of model.marks) {
    const at = value ?? valueAt(model, line, hz)
    if (at === null) continue
    const [x, y] = [plot.valToPos(hz, 'x', true), plot.valToPos(at, 'y', true)]
    if (x > bbox.left + bbox.width) continue
    ctx.strokeStyle = inks.ofSeries(series)
    ctx.fillStyle = isFilled(series) ? inks.ofSeries(series) : inks.paper
    const outline = new Path2D(markerPath(seriesLook(series).marker, 0, 0, markRadius * devicePixelRatio))
    ctx.setTransform(1, 0, 0, 1, x, y)
    ctx.fill(outline)
    ctx.stroke(outline)
    ctx.setTransform(1, 0, 0, 1, 0, 0)
    if (line !== firstLine) continue
    ctx.fillStyle = inks.ink
    ctx.fillText(String(mode), x, y - 7 * devicePixelRatio)
  }
  if (pointed !== null) {
    ctx.strokeStyle = inks.brass
    ctx.lineWidth = devicePixelRatio
    ctx.beginPath()
    const x = plot.valToPos(pointed, 'x', true)
    ctx.moveTo(x, bbox.top)
    ctx.lineTo(x, bbox.top + bbox.height)
    ctx.stroke()
  }
  ctx.fillStyle = inks.soft
  ctx.font = `${13 * devicePixelRatio}px ${inks.font}`
  ctx.textAlign = 'left'
  ctx.textBaseline = 'top'
  ctx.fillText(model.axisName, 4 * devicePixelRatio, 4 * devicePixelRatio)
  ctx.restore()
}
