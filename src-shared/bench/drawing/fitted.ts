import { wordsHeightMm } from './dimension.ts'
import type { Drawing } from './drawing.ts'

/** A drawing made for a space, and how it is shown there. */
export interface FittedDrawing {
  readonly drawing: Drawing
  /** Units of the space for each millimetre of the drawing. */
  readonly scale: number
}

/** Larger words take room, which makes the scale smaller and the words larger again; it settles quickly. */
const rounds = 12
/** Words are never higher than this share of the drawing, or nothing would be left to see beside them. */
const mostWords = 0.08

/**
 * Draws for a space of `width` × `height` units (pixels, or millimetres of paper) so that words come out at least
 * `leastWords` units high there. `draw` makes the drawing with words of a height in its own millimetres. In a space
 * that has no room for drawing and words the words stay smaller.
 *
 * @example fittedDrawing((heightMm) => slideDrawing(sized, 'Third slide', heightMm), 470, 400, 12.5).scale // 3.9
 */
export function fittedDrawing(
  draw: (heightMm: number) => Drawing,
  width: number,
  height: number,
  leastWords: number,
): FittedDrawing {
  let heightMm = wordsHeightMm
  let fitted = scaled(draw(heightMm), width, height)
  const { leftMm, rightMm } = fitted.drawing.bounds
  const mostMm = Math.max(heightMm, mostWords * (rightMm - leftMm))
  for (let round = 0; round < rounds && fitted.scale * heightMm < leastWords * 0.999; round++) {
    heightMm = Math.min(mostMm, leastWords / fitted.scale)
    fitted = scaled(draw(heightMm), width, height)
  }
  return fitted
}

function scaled(drawing: Drawing, width: number, height: number): FittedDrawing {
  const { leftMm, rightMm, bottomMm, topMm } = drawing.bounds
  return { drawing, scale: Math.min(width / (rightMm - leftMm), height / (topMm - bottomMm)) }
}
