/** Characters that no XML file may hold. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
export const notInXml = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu

/** Text as it stands in an SVG document. */
export function escaped(text: string): string {
  return text
    .replace(notInXml, '')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')
}

type Attributes = Readonly<Record<string, string | number>>

/**
 * An element of an SVG document as text, of attributes and what is inside it, which is text of elements already.
 * Numbers are written to a hundredth.
 *
 * @example svgElement('circle', { r: 2.5 }) // '<circle r="2.5"/>'
 */
export function svgElement(name: string, attributes: Attributes, inside = ''): string {
  const said = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(written(value))}"`)
  return `<${name}${said.join('')}${inside === '' ? '/>' : `>${inside}</${name}>`}`
}

/** Words of an SVG document. */
export function svgWords(text: string, attributes: Attributes): string {
  return svgElement('text', attributes, escaped(text))
}

/** A number of a path or a transform, to a thousandth. */
export function pathFigure(px: number): string {
  if (!Number.isFinite(px)) throw new RangeError(`A picture cannot hold ${px}`)
  return String(Math.round(px * 1000) / 1000 + 0)
}

function written(value: string | number): string {
  if (typeof value === 'string') return value
  if (!Number.isFinite(value)) throw new RangeError(`A picture cannot hold ${value}`)
  return String(Math.round(value * 100) / 100 + 0)
}
