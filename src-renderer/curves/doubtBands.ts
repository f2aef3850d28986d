import type uPlot from 'uplot'
import type { ChartBands } from './chartModel.ts'
import type { Inks } from './inkOfTheme.ts'

/** Width of the caps at the ends of a band, CSS px. */
const capPx = 7

/** Draws where each value may come to lie: a shaded run through the categories, with caps at every value. */
export function drawDoubtBands(plot: uPlot, bands: ChartBands, inks: Inks): void {
  const { ctx } = plot
  const runs = runsOf(plot, bands)
  ctx.save()
  ctx.setLineDash([])
  ctx.fillStyle = inks.ofSeries(bands.series)
  ctx.strokeStyle = inks.ofSeries(bands.series)
  ctx.globalAlpha = 0.16
  for (const run of runs) {
    ctx.beginPath()
    for (const { x, high } of run) ctx.lineTo(x, high)
    for (const { x, low } of run.toReversed()) ctx.lineTo(x, low)
    ctx.closePath()
    ctx.fill()
  }
  ctx.globalAlpha = 1
  ctx.lineWidth = devicePixelRatio
  const cap = (capPx / 2) * devicePixelRatio
  ctx.beginPath()
  for (const { x, low, high } of runs.flat()) {
    ctx.moveTo(x, low)
    ctx.lineTo(x, high)
    for (const end of [low, high]) {
      ctx.moveTo(x - cap, end)
      ctx.lineTo(x + cap, end)
    }
  }
  ctx.stroke()
  ctx.restore()
}

interface Place {
  readonly x: number
  readonly low: number
  readonly high: number
}

/** The places of the bands, a run ending where a value is left out, as the curve does. */
function runsOf(plot: uPlot, { lowest, highest }: ChartBands): readonly (readonly Place[])[] {
  const runs: Place[][] = [[]]
  for (const [i, low] of lowest.entries()) {
    const high = highest[i] ?? null
    if (low === null || high === null) runs.push([])
    else runs.at(-1)!.push({ x: plot.valToPos(i, 'x', true), low: y(plot, low), high: y(plot, high) })
  }
  return runs
}

function y(plot: uPlot, cents: number): number {
  return plot.valToPos(cents, 'y', true)
}
