import { onLightPaper } from './lightPaper.ts'
import { takeStyle } from './ownStyle.ts'
import { notInXml } from './svgElement.ts'

const svgSpace = 'http://www.w3.org/2000/svg'

/**
 * A picture of the page as an SVG document that stands alone: titled, of its present size, in the light theme's
 * colours on white paper.
 */
export function selfContained(picture: SVGSVGElement, title: string): string {
  const { width, height } = sizeOf(picture)
  const box = picture.getAttribute('viewBox') ?? `0 0 ${width} ${height}`
  const copy = picture.cloneNode(true) as SVGSVGElement
  onLightPaper(() => takeStyle(picture, copy))
  copy.setAttribute('viewBox', box)
  copy.setAttribute('width', String(width))
  copy.setAttribute('height', String(height))
  copy.querySelector(':scope > title')?.remove()
  copy.prepend(element('title', {}, title), paper(box))
  return `${new XMLSerializer().serializeToString(copy).replace(notInXml, '')}\n`
}

/** As large as it is on screen; as large as it says of itself where it is not laid out. */
function sizeOf(picture: SVGSVGElement): { readonly width: number; readonly height: number } {
  const { width, height } = picture.getBoundingClientRect()
  if (width > 0 && height > 0) return { width: rounded(width), height: rounded(height) }
  const { baseVal } = picture.viewBox
  return { width: rounded(baseVal.width || 300), height: rounded(baseVal.height || 150) }
}

function rounded(px: number): number {
  return Math.round(px * 100) / 100
}

function paper(box: string): Element {
  const [x = '0', y = '0', width = '0', height = '0'] = box.trim().split(/[\s,]+/)
  return element('rect', { x, y, width, height, fill: '#ffffff', stroke: 'none' })
}

function element(name: string, attributes: Readonly<Record<string, string>>, text = ''): Element {
  const made = document.createElementNS(svgSpace, name)
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value)
  made.textContent = text
  return made
}
