import { type ReactNode, useLayoutEffect, useRef } from 'react'

/** An SVG document shown as part of the page. */
export function SvgText({ svg, label }: { readonly svg: string; readonly label: string }): ReactNode {
  const place = useRef<HTMLDivElement>(null)
  useLayoutEffect(() => {
    const { documentElement } = new DOMParser().parseFromString(svg, 'image/svg+xml')
    place.current?.replaceChildren(document.importNode(documentElement, true))
  }, [svg])
  return <div className="svgText" role="img" aria-label={label} ref={place} />
}
