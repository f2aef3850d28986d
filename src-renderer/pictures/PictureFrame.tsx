import { type ReactNode, useLayoutEffect, useState } from 'react'
import { useWidth } from '../look/useWidth.ts'
import { PictureOut } from '../picture/PictureOut.tsx'
import { pictureWords } from '../words/pictures.ts'

interface PictureFrameProps {
  /** Name of its file, without its ending. */
  readonly name: string
  /** Draws the picture for a width, CSS px. */
  readonly draw: (width: number) => ReactNode
  /** It is never drawn narrower; the frame scrolls then. */
  readonly least?: number
}

/** Gives a picture the room there is, and lets it be saved. One that needs more scrolls, by the keyboard too. */
export function PictureFrame({ name, draw, least = 560 }: PictureFrameProps): ReactNode {
  const [frame, width] = useWidth<HTMLElement>()
  const [scrolls, setScrolls] = useState(false)
  // What is drawn may be wider than it was asked to be, so it is measured after every drawing.
  useLayoutEffect(() => {
    if (frame.current) setScrolls(frame.current.scrollWidth > frame.current.clientWidth)
  })
  return (
    <PictureOut name={name}>
      <figure
        className="pictureFrame"
        ref={frame}
        {...(scrolls ? { tabIndex: 0, 'aria-label': pictureWords.wide } : {})}
      >
        {width === 0 ? null : draw(Math.max(width, least))}
      </figure>
    </PictureOut>
  )
}
