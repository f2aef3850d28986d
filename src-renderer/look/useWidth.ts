import { type RefObject, useLayoutEffect, useRef, useState } from 'react'

/** The width of an element's content as it stands, CSS px; 0 until it has been measured. */
export function useWidth<E extends HTMLElement>(): readonly [RefObject<E | null>, number] {
  const frame = useRef<E>(null)
  const [width, setWidth] = useState(0)
  useLayoutEffect(() => {
    const observer = new ResizeObserver(([entry]) => setWidth(Math.floor(entry?.contentRect.width ?? 0)))
    if (frame.current) observer.observe(frame.current)
    return () => observer.disconnect()
  }, [])
  return [frame, width]
}
