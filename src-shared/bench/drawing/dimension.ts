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

/** The same along y, on the line `xMm`, its words upright to the left of it. Short of room its arrows stand outside. */
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
    ...(Math.abs(b.yMm - a.yMm) >= 3 * arrow * heightMm
      ? [line('dimension', a, b), ...arrows(a, b, heightMm)]
      : arrowsFromOutside(a, b, heightMm)),
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
  const [ux, uy] = direction(a, b)
  const tailMm = 1.6 * arrow * heightMm
  const outerA = point(a.xMm - tailMm * ux, a.yMm - tailMm * uy)
  const outerB = point(b.xMm + tailMm * ux, b.yMm + tailMm * uy)
  return [line('dimension', outerA, outerB), ...barbs(a, -ux, -uy, heightMm), ...barbs(b, ux, uy, heightMm)]
}

/** An open arrow at each end, pointing outward. */
function arrows(a: Point, b: Point, heightMm: number): readonly Line[] {
  if (a.xMm === b.xMm && a.yMm === b.yMm) return []
  const [ux, uy] = direction(a, b)
  return [...barbs(a, ux, uy, heightMm), ...barbs(b, -ux, -uy, heightMm)]
}

/** The two barbs of an arrow, which lie from its tip in a direction. */
function barbs(tip: Point, ux: number, uy: number, heightMm: number): readonly Line[] {
  const arrowMm = arrow * heightMm
  return [1, -1].map((aside) =>
    line(
      'dimension',
      tip,
      point(tip.xMm + arrowMm * (ux - (aside * uy) / 4), tip.yMm + arrowMm * (uy + (aside * ux) / 4)),
    ),
  )
}

/** The unit vector from one place to another; along y where the two are one. */
function direction(a: Point, b: Point): readonly [x: number, y: number] {
  const lengthMm = Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm)
  return lengthMm === 0 ? [0, 1] : [(b.xMm - a.xMm) / lengthMm, (b.yMm - a.yMm) / lengthMm]
}
