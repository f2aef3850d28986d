/** Properties that an element takes from the one around it, and their values where nothing is said. */
const inherited: Readonly<Record<string, string>> = {
  fill: 'rgb(0, 0, 0)',
  'fill-opacity': '1',
  'fill-rule': 'nonzero',
  stroke: 'none',
  'stroke-width': '1px',
  'stroke-opacity': '1',
  'stroke-dasharray': 'none',
  'stroke-dashoffset': '0px',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  'paint-order': 'normal',
  'font-family': '',
  'font-size': '',
  'font-weight': '400',
  'font-style': 'normal',
  'letter-spacing': 'normal',
  'text-anchor': 'start',
  'dominant-baseline': 'auto',
  visibility: 'visible',
}

/** Properties of an element alone. */
const own: Readonly<Record<string, string>> = {
  opacity: '1',
  'stop-color': 'rgb(0, 0, 0)',
  'stop-opacity': '1',
  'vector-effect': 'none',
  'clip-path': 'none',
  mask: 'none',
}

/** Attributes that mean something only on the page. */
const ofThePage = /^(class|style|role|tabindex|aria-.*|data-.*|on.*)$/

type Values = Readonly<Record<string, string>>

/**
 * Gives a copy of a picture every colour, line and face of its original as attributes, so that it needs no style
 * sheet. What is not shown is left out. Transforms and places must stand in attributes, as they do in a drawing.
 */
export function takeStyle(original: Element, copy: Element, around: Values = inherited): void {
  const style = getComputedStyle(original)
  for (const { name } of [...copy.attributes]) if (ofThePage.test(name)) copy.removeAttribute(name)
  const values: Record<string, string> = {}
  for (const name of Object.keys(inherited)) values[name] = style.getPropertyValue(name)
  for (const name of ['fill', 'stroke']) partAlpha(values, name)
  for (const [name, value] of Object.entries(values)) write(copy, name, value, around[name] ?? '')
  for (const [name, initial] of Object.entries(own)) write(copy, name, style.getPropertyValue(name), initial)
  const copies = [...copy.children]
  for (const [i, child] of [...original.children].entries()) {
    const twin = copies[i]!
    if (getComputedStyle(child).display === 'none' && !isDefinition(child)) twin.remove()
    else takeStyle(child, twin, values)
  }
}

/** Makes of a colour that is seen through a plain one with an opacity: not every program knows one of four numbers. */
function partAlpha(values: Record<string, string>, name: string): void {
  const [, plain, alpha] = /^rgba\((.+), ([\d.]+)\)$/.exec(values[name] ?? '') ?? []
  if (plain === undefined) return
  const opacity = Number(values[`${name}-opacity`]) * Number(alpha)
  values[name] = opacity === 0 ? 'none' : `rgb(${plain})`
  if (opacity > 0) values[`${name}-opacity`] = String(opacity)
}

/** A gradient or a title is never shown itself, and yet is needed. */
function isDefinition({ localName }: Element): boolean {
  return /^(defs|title|desc|stop|.*Gradient|clipPath|mask|marker|pattern|symbol)$/.test(localName)
}

function write(element: Element, name: string, value: string, otherwise: string): void {
  element.removeAttribute(name)
  if (value !== otherwise && value !== '') element.setAttribute(name, value.replace(/(\d)px\b/g, '$1'))
}
