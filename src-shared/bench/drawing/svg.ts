import type { Arc, Drawing, Label, Line, Point, Shape, StrokeKind } from './drawing.ts'

/** Line width and dashes of each stroke, mm on paper. */
const strokes: Readonly<Record<StrokeKind, { readonly widthMm: number; readonly dashes: string }>> = {
  outline: { widthMm: 0.35, dashes: '' },
  hidden: { widthMm: 0.18, dashes: '2 1' },
  centre: { widthMm: 0.18, dashes: '6 1 1 1' },
  dimension: { widthMm: 0.13, dashes: '' },
}

/**
 * A drawing as an SVG document at full size: one user unit is one millimetre, width and height are in mm, lines
 * take the colour of the text around them.
 *
 * @example svgText(templateDrawing(drawing)) // '<svg xmlns="http://www.w3.org/2000/svg" width="160mm" …'
 */
export function svgText({ title, shapes, bounds }: Drawing): string {
  const [width, height] = [bounds.rightMm - bounds.leftMm, bounds.topMm - bounds.bottomMm]
  const box = [bounds.leftMm, -bounds.topMm, width, height].map(figure).join(' ')
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${figure(width)}mm" height="${figure(height)}mm" viewBox="${box}" color="#000" fill="none" stroke="currentColor" stroke-linecap="round">`,
    `<title>${escaped(title)}</title>`,
    ...shapes.map(shapeText),
    '</svg>',
    '',
  ].join('\n')
}

/** Path data of an arc with y down, as SVG has it. */
export function arcPath({ centre, radiusMm, startDegrees, endDegrees }: Arc): string {
  const place = (degrees: number): string => {
    const angle = (degrees * Math.PI) / 180
    return pair({
      xMm: centre.xMm + radiusMm * Math.cos(angle),
      yMm: centre.yMm + radiusMm * Math.sin(angle),
    })
  }
  const large = endDegrees - startDegrees > 180 ? 1 : 0
  return `M ${place(startDegrees)} A ${figure(radiusMm)} ${figure(radiusMm)} 0 ${large} 0 ${place(endDegrees)}`
}

function shapeText(shape: Shape): string {
  if (shape.kind === 'label') return labelText(shape)
  return `<path d="${shape.kind === 'line' ? linePath(shape) : arcPath(shape)}"${strokeText(shape.stroke)}/>`
}

function linePath({ from, to }: Line): string {
  return `M ${pair(from)} L ${pair(to)}`
}

function labelText({ at, text, heightMm, upright }: Label): string {
  const turn = upright ? ` transform="rotate(-90 ${pair(at)})"` : ''
  return `<text x="${figure(at.xMm)}" y="${figure(-at.yMm)}" font-family="sans-serif" font-size="${figure(heightMm)}" text-anchor="middle" fill="currentColor" stroke="none"${turn}>${escaped(text)}</text>`
}

function strokeText(kind: StrokeKind): string {
  const { widthMm, dashes } = strokes[kind]
  return ` stroke-width="${widthMm}"${dashes === '' ? '' : ` stroke-dasharray="${dashes}"`}`
}

function pair({ xMm, yMm }: Point): string {
  return `${figure(xMm)} ${figure(-yMm)}`
}

/** To a ten-thousandth of a millimetre, without trailing noughts and without −0. */
function figure(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`A drawing cannot hold ${value}`)
  return String(Math.round(value * 10_000) / 10_000 + 0)
}

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;')
}
