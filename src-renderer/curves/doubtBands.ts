import type uPlot from 'uplot'
import type { ChartBands } from './chartModel.ts'
import type { Inks } from './inkOfTheme.ts'

/** Width of the caps at the ends of a band, CSS px. */
const capPx = 7

/** Draws where each value may come to lie: a shaded run through the categories, with caps at every value. */
export function drawDoubtBands(plot: uPlot, bands: ChartBands, inks: Inks): void {
  const { ctx } = plot
  const places = bands.lowest.flatMap((low, i) => {
    const high = bands.highest[i]
    if (low === null || high === null || high === undefined) return []
    return [{ x: plot.valToPos(i, 'x', true), low: y(plot, low), high: y(plot, high) }]
  })
  if (places.length === 0) return
  ctx.save()
  ctx.setLineDash([])
  ctx.fillStyle = inks.ofSeries(bands.series)
  ctx.strokeStyle = inks.ofSeries(bands.series)
  ctx.globalAlpha = 0.16
  ctx.beginPath()
  for (const { x, high } of places) ctx.lineTo(x, high)
  for (const { x, low } of places.toReversed()) ctx.lineTo(x, low)
  ctx.closePath()
  ctx.fill()
  ctx.globalAlpha = 1
  ctx.lineWidth = devicePixelRatio
  const cap = (capPx / 2) * devicePixelRatio
  ctx.beginPath()
  for (const { x, low, high } of places) {
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

function y(plot: uPlot, cents: number): number {
  return plot.valToPos(cents, 'y', true)
}
