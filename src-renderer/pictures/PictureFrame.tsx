import type { ReactNode } from 'react'
import { useWidth } from './useWidth.ts'

interface PictureFrameProps {
  /** Draws the picture for a width, CSS px. */
  readonly draw: (width: number) => ReactNode
  /** It is never drawn narrower; the frame scrolls then. */
  readonly least?: number
}

/** Gives a picture the room there is. */
export function PictureFrame({ draw, least = 560 }: PictureFrameProps): ReactNode {
  const [frame, width] = useWidth<HTMLElement>()
  return (
    <figure className="pictureFrame" ref={frame}>
      {width === 0 ? null : draw(Math.max(width, least))}
    </figure>
  )
}
