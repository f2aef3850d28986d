import type uPlot from 'uplot'
import { labelLinePx } from './categoryLabels.ts'
import type { Inks } from './inkOfTheme.ts'

/** From the plot's lower edge to the first line of the labels, CSS px. */
const gapPx = 6

/**
 * The strip of labels below a plot, drawn once for each size: letters cost more than all the rest of a chart, and
 * a chart is drawn anew with every frame of a drag.
 */
export function categoryStrip(labels: readonly string[], inks: Inks): (plot: uPlot) => HTMLCanvasElement {
  let kept: { readonly key: string; readonly image: HTMLCanvasElement } | null = null
  return (plot) => {
    const { bbox } = plot
    const key = `${bbox.left} ${bbox.width} ${plot.ctx.canvas.width} ${devicePixelRatio}`
    if (kept?.key !== key) kept = { key, image: drawn(labels, inks, plot) }
    return kept.image
  }
}

function drawn(labels: readonly string[], inks: Inks, plot: uPlot): HTMLCanvasElement {
  const { bbox, ctx: own } = plot
  const image = document.createElement('canvas')
  image.width = own.canvas.width
  image.height = Math.max(1, own.canvas.height - bbox.top - bbox.height)
  const ctx = image.getContext('2d')
  if (ctx === null) return image
  ctx.font = `${13 * devicePixelRatio}px ${inks.font}`
  ctx.fillStyle = inks.ink
  ctx.textAlign = 'center'
  ctx.textBaseline = 'top'
  for (const [i, label] of labels.entries()) {
    const x = plot.valToPos(i, 'x', true)
    for (const [line, text] of label.split('\n').entries())
      ctx.fillText(text, x, (gapPx + line * labelLinePx) * devicePixelRatio)
  }
  return image
}
