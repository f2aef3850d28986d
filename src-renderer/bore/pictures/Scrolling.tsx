import { type ReactNode, useLayoutEffect, useRef, useState } from 'react'

interface ScrollingProps {
  readonly label: string
  readonly className: string
  readonly height?: number
  readonly children: ReactNode
}

/** A place that scrolls sideways when what is in it is too wide; only then keys can reach it. */
export function Scrolling({ label, className, height, children }: ScrollingProps): ReactNode {
  const place = useRef<HTMLDivElement>(null)
  const [scrolls, setScrolls] = useState(false)
  useLayoutEffect(() => {
    const look = (): void => {
      const element = place.current
      if (element !== null) setScrolls(element.scrollWidth > element.clientWidth)
    }
    look()
    const observer = new ResizeObserver(look)
    if (place.current) observer.observe(place.current)
    return () => observer.disconnect()
  })
  return (
    <div
      ref={place}
      className={className}
      style={height === undefined ? undefined : { height }}
      {...(scrolls ? { tabIndex: 0, role: 'group', 'aria-label': label } : {})}
    >
      {children}
    </div>
  )
}
