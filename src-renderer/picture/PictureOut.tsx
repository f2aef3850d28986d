import { type ReactNode, useRef } from 'react'
import { keepExport } from '../bridge/keepExport.ts'
import type { Inks } from '../curves/inkOfTheme.ts'
import '../look/out.css'
import { useFile } from '../state/fileActions.ts'
import { pictureWords as words } from '../words/picture.ts'
import { withFaces } from './faces.ts'
import type { KeyEntry } from './pictureKey.ts'
import { pngOf } from './pixels.ts'
import { selfContained } from './selfContained.ts'
import { underTitle } from './underTitle.ts'

interface PictureOutProps {
  /** Name of the file, without its ending. */
  readonly name: string
  /** What the picture shows, for its title; its own when absent, or the name. */
  readonly title?: string
  /** The picture as an SVG document, where it is not an `<svg>` of the page. */
  readonly svg?: () => string
  /** Names and samples of a key that stands beside the picture: they are drawn above it with the title. */
  readonly keyOf?: (inks: Inks) => readonly KeyEntry[]
  readonly children: ReactNode
}

/**
 * Lets a person save the picture inside: as SVG, with its own colours and faces, and as PNG of twice its size.
 *
 *     <PictureOut name="Resonances" title="Input impedance of the bass in F"><svg …/></PictureOut>
 */
export function PictureOut({ name, title, svg, keyOf, children }: PictureOutProps): ReactNode {
  const place = useRef<HTMLDivElement>(null)
  const document = (): Promise<string> | null => {
    const picture = svg === undefined ? largestPicture(place.current) : null
    if (svg !== undefined) return withFaces(svg())
    if (picture === null) return null
    const called = title ?? ownTitle(picture) ?? name
    return withFaces(keyOf ? underTitle(picture, called, keyOf) : selfContained(picture, called))
  }
  const keepSvg = async (): Promise<void> => {
    const content = await document()
    if (content !== null) await keepExport({ name: `${name}.svg`, mediaType: 'image/svg+xml', content })
  }
  const keepPng = async (): Promise<void> => {
    const drawn = await document()
    const content = drawn === null ? null : await pngOf(drawn)
    if (content !== null) return keepExport({ name: `${name}.png`, mediaType: 'image/png', content })
    useFile.setState({ trouble: { title: words.failed(name), message: words.notDrawn } })
  }
  return (
    <div className="pictureOut" ref={place}>
      {children}
      {/* biome-ignore lint/a11y/useSemanticElements: two buttons are no fieldset */}
      <div className="outButtons" role="group" aria-label={words.group(name)}>
        <span aria-hidden="true">{words.picture}</span>
        <button type="button" className="quiet" aria-label={words.svg(name)} onClick={() => void keepSvg()}>
          {words.svgShown}
        </button>
        <button type="button" className="quiet" aria-label={words.png(name)} onClick={() => void keepPng()}>
          {words.pngShown}
        </button>
      </div>
    </div>
  )
}

function ownTitle(picture: SVGSVGElement): string | null {
  return picture.querySelector(':scope > title')?.textContent ?? null
}

/** The picture itself, not the marks of its key. */
function largestPicture(place: HTMLElement | null): SVGSVGElement | null {
  const area = (picture: SVGSVGElement): number => {
    const { width, height } = picture.getBoundingClientRect()
    return width * height
  }
  const all = [...(place?.querySelectorAll('svg') ?? [])].filter(
    (svg) => svg.parentElement?.closest('svg') === null,
  )
  return all.reduce<SVGSVGElement | null>(
    (most, each) => (most === null || area(each) > area(most) ? each : most),
    null,
  )
}
