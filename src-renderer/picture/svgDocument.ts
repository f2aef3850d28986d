import type { Inks } from '../curves/inkOfTheme.ts'
import { svgElement as element, escaped, svgWords } from './svgElement.ts'

/** Height of the title at the top of a document, px. */
export const titlePx = 30

interface DocumentSize {
  readonly widthPx: number
  readonly heightPx: number
}

/** An SVG document on paper under its title, which is both its name and drawn. The parts are text of elements. */
export function svgDocument(
  title: string,
  inks: Inks,
  { widthPx, heightPx }: DocumentSize,
  parts: readonly string[],
): string {
  const all = [
    element('title', {}, escaped(title)),
    element('rect', { width: widthPx, height: heightPx, fill: inks.paper }),
    svgWords(title, { x: 4, y: 19, 'font-size': 15, 'font-weight': 600, fill: inks.ink }),
    ...parts.filter((part) => part !== ''),
  ]
  const space = { xmlns: 'http://www.w3.org/2000/svg', width: widthPx, height: heightPx }
  const face = { viewBox: `0 0 ${widthPx} ${heightPx}`, 'font-family': inks.font, 'font-size': 13 }
  return `${element('svg', { ...space, ...face }, `\n${all.join('\n')}\n`)}\n`
}
