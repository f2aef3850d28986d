import type { Inks } from '../curves/inkOfTheme.ts'
import { markerPath } from '../look/SeriesMark.tsx'
import { seriesLook } from '../look/seriesLook.ts'
import { svgElement as element, pathFigure, svgWords } from './svgElement.ts'

/** Something that a picture explains: its name and a sample, drawn rightwards from a point. */
export interface KeyEntry {
  readonly name: string
  readonly sample: (x: number, y: number) => string
  /** Width of the sample, px; 36 when absent. */
  readonly samplePx?: number
}

/** Width of a sample unless it says otherwise, px. */
const usualSamplePx = 36

/** Height of a line of the key, px. */
const linePx = 20

/** Room that a letter of the key takes at most, px. */
const letterPx = 7.4

/** The key of a picture as elements of SVG: samples and names, as many in a row as there is room for. */
export function pictureKey(
  entries: readonly KeyEntry[],
  inks: Inks,
  { widthPx, topPx }: { readonly widthPx: number; readonly topPx: number },
): { readonly text: string; readonly heightPx: number } {
  let [x, line] = [4, 0]
  const texts = entries.map(({ name: whole, sample, samplePx = usualSamplePx }) => {
    const most = Math.floor((widthPx - 18 - samplePx) / letterPx)
    const name = whole.length > most ? `${whole.slice(0, most - 1)}…` : whole
    const roomPx = 10 + samplePx + letterPx * name.length
    if (x > 4 && x + roomPx > widthPx) [x, line] = [4, line + 1]
    const y = topPx + 10 + line * linePx
    const text = sample(x, y) + svgWords(name, { x: x + samplePx + 8, y: y + 4.5, fill: inks.ink })
    x += roomPx + 18
    return text
  })
  return { text: texts.join('\n'), heightPx: entries.length === 0 ? 0 : (line + 1) * linePx }
}

/** What a series of a chart looks like: its line with a marker on it, filled or not. */
export function seriesSample(series: number, inks: Inks, isFilled = false): KeyEntry['sample'] {
  const { dash, marker } = seriesLook(series)
  const colour = inks.ofSeries(series)
  const stroke = { stroke: colour, 'stroke-width': 2 }
  return (x, y) =>
    [
      element('path', { d: `M${pathFigure(x)} ${pathFigure(y)}h36`, ...stroke, ...dashed(dash) }),
      element('path', {
        d: markerPath(marker, x + 18, y, 4),
        ...stroke,
        fill: isFilled ? colour : inks.paper,
      }),
    ].join('')
}

/** The dashes of a line as an attribute, where it has any. */
export function dashed(dash: readonly number[]): Readonly<Record<string, string>> {
  return dash.length === 0 ? {} : { 'stroke-dasharray': dash.join(' ') }
}
