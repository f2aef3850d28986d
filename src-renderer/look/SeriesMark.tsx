import type { ReactNode } from 'react'
import { type Marker, seriesLook } from './seriesLook.ts'

/** A short sample of a design's line. */
export function SeriesMark({ series }: { readonly series: number }): ReactNode {
  const { colour, dash, marker } = seriesLook(series)
  return (
    <svg
      className="seriesMark"
      width="38"
      height="12"
      aria-hidden="true"
      style={{ stroke: `var(${colour})` }}
    >
      <line x1="1" x2="37" y1="6" y2="6" strokeWidth="2.4" strokeDasharray={dash.join(' ')} />
      <path d={markerPath(marker, 19, 6, 4)} strokeWidth="2" />
    </svg>
  )
}

/** Outline of a marker of radius `r` around a point, for SVG and, through Path2D, for a canvas. */
export function markerPath(marker: Marker, x: number, y: number, r: number): string {
  switch (marker) {
    case 'circle':
      return `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`
    case 'square':
      return `M${x - r} ${y - r}h${2 * r}v${2 * r}h${-2 * r}Z`
    case 'triangle':
      return `M${x} ${y - r * 1.2}L${x + r * 1.15} ${y + r * 0.9}H${x - r * 1.15}Z`
    case 'diamond':
      return `M${x} ${y - r * 1.3}L${x + r * 1.3} ${y}L${x} ${y + r * 1.3}L${x - r * 1.3} ${y}Z`
    case 'cross':
      return `M${x - r} ${y - r}L${x + r} ${y + r}M${x + r} ${y - r}L${x - r} ${y + r}`
  }
}
