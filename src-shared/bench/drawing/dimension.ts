import { type Label, type Line, line, type Point, point, type Shape } from './drawing.ts'

/** Height of a dimension's words on a drawing at full size, mm. */
export const wordsHeightMm = 3

/** Overshoot of extension lines and length of arrows, over the height of the words. */
const overshoot = 0.5
const arrow = 0.7

/**
 * A dimension along x between two places, drawn on the level `yMm`: extension lines, the line with its arrows,
 * and its words, `heightMm` high, above. Where the words have no room between the arrows they stand to the left,
 * and the arrows point inward from outside.
 *
 * @example levelDimension(point(0, 0), point(60, 0), -20, 'outer leg 60.0')
 */
export function levelDimension(
  from: Point,
  to: Point,
  yMm: number,
  text: string,
  heightMm = wordsHeightMm,
): readonly Shape[] {
  const side = Math.sign(yMm - from.yMm) || 1
  const overshootMm = overshoot * heightMm
  const [a, b] = [point(from.xMm, yMm), point(to.xMm, yMm)]
  const roomy = b.xMm - a.xMm >= wordsWidthMm(text, heightMm) + heightMm / 2
  const middle = point((a.xMm + b.xMm) / 2, yMm + heightMm / 3)
  const aside = point(a.xMm - 2 * arrow * heightMm - wordsWidthMm(text, heightMm) / 2, yMm - heightMm / 3)
  return [
    line('dimension', from, point(from.xMm, yMm + side * overshootMm)),
    line('dimension', to, point(to.xMm, yMm + side * overshootMm)),
    ...(roomy ? [line('dimension', a, b), ...arrows(a, b, heightMm)] : arrowsFromOutside(a, b, heightMm)),
    label(roomy ? middle : aside, text, false, heightMm),
  ]
}

/** The same along y, on the line `xMm`, its words upright to the left of it. */
export function uprightDimension(
  from: Point,
  to: Point,
  xMm: number,
  text: string,
  heightMm = wordsHeightMm,
): readonly Shape[] {
  const side = Math.sign(xMm - from.xMm) || 1
  const overshootMm = overshoot * heightMm
  const [a, b] = [point(xMm, from.yMm), point(xMm, to.yMm)]
  return [
    line('dimension', from, point(xMm + side * overshootMm, from.yMm)),
    line('dimension', to, point(xMm + side * overshootMm, to.yMm)),
    line('dimension', a, b),
    ...arrows(a, b, heightMm),
    label(point(xMm - heightMm / 3, (a.yMm + b.yMm) / 2), text, true, heightMm),
  ]
}

/** Makes words, of the usual height unless told. */
export function label(at: Point, text: string, upright: boolean, heightMm = wordsHeightMm): Label {
  return { kind: 'label', at, text, heightMm, upright }
}

/** Width that words take at most, mm; a generous guess that holds for any plain face. */
export function wordsWidthMm(text: string, heightMm: number): number {
  return 0.58 * heightMm * text.length
}

/** The line drawn through, its arrows outside of the two places and pointing at each other. */
function arrowsFromOutside(a: Point, b: Point, heightMm: number): readonly Line[] {
  const tailMm = 1.6 * arrow * heightMm
  const [outerA, outerB] = [point(a.xMm - tailMm, a.yMm), point(b.xMm + tailMm, b.yMm)]
  const barb = (tip: Point, aside: number, outward: number) =>
    line(
      'dimension',
      tip,
      point(tip.xMm + outward * arrow * heightMm, tip.yMm + (aside * arrow * heightMm) / 4),
    )
  return [line('dimension', outerA, outerB), barb(a, 1, -1), barb(a, -1, -1), barb(b, 1, 1), barb(b, -1, 1)]
}

/** An open arrow at each end, pointing outward. */
function arrows(a: Point, b: Point, heightMm: number): readonly Line[] {
  const arrowMm = arrow * heightMm
  const lengthMm = Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm)
  if (lengthMm === 0) return []
  const [ux, uy] = [(b.xMm - a.xMm) / lengthMm, (b.yMm - a.yMm) / lengthMm]
  const barb = (tip: Point, inward: number, aside: number) =>
    line(
      'dimension',
      tip,
      point(
        tip.xMm + inward * arrowMm * ux - (aside * arrowMm * uy) / 4,
        tip.yMm + inward * arrowMm * uy + (aside * arrowMm * ux) / 4,
      ),
    )
  return [barb(a, 1, 1), barb(a, 1, -1), barb(b, -1, 1), barb(b, -1, -1)]
}
