import { type RefObject, useLayoutEffect, useRef, useState } from 'react'

/** Width that an element has, CSS px; 0 before it is known. */
export function useWidth<Frame extends HTMLElement>(): readonly [RefObject<Frame | null>, number] {
  const frame = useRef<Frame>(null)
  const [width, setWidth] = useState(0)
  useLayoutEffect(() => {
    const observer = new ResizeObserver(([entry]) => setWidth(Math.floor(entry?.contentRect.width ?? 0)))
    if (frame.current) observer.observe(frame.current)
    return () => observer.disconnect()
  }, [])
  return [frame, width]
}
