import { type Inks, inksAt } from '../curves/inkOfTheme.ts'
import { onLightPaper } from './lightPaper.ts'
import { type KeyEntry, pictureKey } from './pictureKey.ts'
import { selfContained } from './selfContained.ts'
import { svgDocument, titlePx } from './svgDocument.ts'

/** Room between the key and the picture, px. */
const underKeyPx = 8

/**
 * A picture of the page as an SVG document, with its title and a key drawn above it: on the page those stand beside
 * the picture, not in it.
 */
export function underTitle(
  picture: SVGSVGElement,
  title: string,
  keyOf: (inks: Inks) => readonly KeyEntry[],
): string {
  const { documentElement: inner } = new DOMParser().parseFromString(
    selfContained(picture, title),
    'image/svg+xml',
  )
  const [widthPx, innerPx] = ['width', 'height'].map((name) => Number(inner.getAttribute(name))) as [
    number,
    number,
  ]
  inner.querySelector(':scope > title')?.remove()
  // Inks are read when they are asked for.
  return onLightPaper(() => {
    const inks = inksAt(picture)
    const key = pictureKey(keyOf(inks), inks, { widthPx, topPx: titlePx })
    const topPx = titlePx + key.heightPx + underKeyPx
    inner.setAttribute('y', String(topPx))
    const parts = [key.text, new XMLSerializer().serializeToString(inner)]
    return svgDocument(title, inks, { widthPx, heightPx: topPx + innerPx }, parts)
  })
}
