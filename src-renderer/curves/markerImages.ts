import { markerPath } from '../look/SeriesMark.tsx'
import { seriesLook } from '../look/seriesLook.ts'
import type { Inks } from './inkOfTheme.ts'

/** The marker of a series, of a radius in CSS px, to be drawn around a point of a chart. */
export type MarkerImages = (series: number, radiusPx: number) => HTMLCanvasElement

/** Width of a marker's outline, CSS px. */
const outlinePx = 2

/** From a marker's middle to the farthest tip of its outline, in radii. */
const reach = 1.3

/** Markers as images, each drawn once: a chart has hundreds of them in every frame of a drag. */
export function markerImages(inks: Inks): MarkerImages {
  const kept = new Map<string, HTMLCanvasElement>()
  return (series, radiusPx) => {
    const key = `${series} ${radiusPx} ${devicePixelRatio}`
    const image = kept.get(key) ?? drawn(series, radiusPx, inks)
    kept.set(key, image)
    return image
  }
}

function drawn(series: number, radiusPx: number, inks: Inks): HTMLCanvasElement {
  const image = document.createElement('canvas')
  const halfPx = Math.ceil((radiusPx * reach + outlinePx) * devicePixelRatio)
  image.width = 2 * halfPx
  image.height = 2 * halfPx
  const ctx = image.getContext('2d')
  if (ctx === null) return image
  const outline = new Path2D(
    markerPath(seriesLook(series).marker, halfPx, halfPx, radiusPx * devicePixelRatio),
  )
  ctx.lineWidth = outlinePx * devicePixelRatio
  ctx.strokeStyle = inks.ofSeries(series)
  ctx.fillStyle = inks.paper
  ctx.fill(outline)
  ctx.stroke(outline)
  return image
}
