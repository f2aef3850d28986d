import { label } from './dimension.ts'
import { type Drawing, drawing, line, point } from './drawing.ts'

/** Length of the line that shows whether a print came out at full size, mm. */
export const checkLineMm = 100

/**
 * A drawing made ready to print at full size: its title above, and below it a line of exactly 100 mm to measure
 * before the print is trusted.
 *
 * @example templateDrawing(slideDrawing(sized, 'Third slide'))
 */
export function templateDrawing(plain: Drawing): Drawing {
  const { leftMm, rightMm, bottomMm, topMm } = plain.bounds
  const middleMm = (leftMm + rightMm) / 2
  const [from, to] = [middleMm - checkLineMm / 2, middleMm + checkLineMm / 2]
  const lineMm = bottomMm - 8
  const ticks = [from, to].map((xMm) => line('dimension', point(xMm, lineMm - 2), point(xMm, lineMm + 2)))
  const shapes = [
    ...plain.shapes,
    { ...label(point(middleMm, topMm + 2), plain.title, false), heightMm: 5 },
    line('dimension', point(from, lineMm), point(to, lineMm)),
    ...ticks,
    label(point(middleMm, lineMm + 1), 'This line must measure 100 mm', false),
  ]
  return drawing(plain.title, shapes, 5)
}
