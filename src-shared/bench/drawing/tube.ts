import { type Arc, type Line, line, type Point, point, type Shape, type StrokeKind } from './drawing.ts'

/** A straight tube along x: its two walls, and its ends when they are cut. */
export function straightTube(
  stroke: StrokeKind,
  from: Point,
  toXMm: number,
  diameterMm: number,
): readonly Line[] {
  const [low, high] = [from.yMm - diameterMm / 2, from.yMm + diameterMm / 2]
  return [
    line(stroke, point(from.xMm, low), point(toXMm, low)),
    line(stroke, point(from.xMm, high), point(toXMm, high)),
    line(stroke, point(from.xMm, low), point(from.xMm, high)),
    line(stroke, point(toXMm, low), point(toXMm, high)),
  ]
}

/** The walls of a straight tube that goes on into a bow, and a thin line where the bend begins. */
export function straightIntoBow(from: Point, toXMm: number, diameterMm: number): readonly Line[] {
  const [low, high] = [from.yMm - diameterMm / 2, from.yMm + diameterMm / 2]
  return [
    line('outline', point(from.xMm, low), point(toXMm, low)),
    line('outline', point(from.xMm, high), point(toXMm, high)),
    line('dimension', point(toXMm, low), point(toXMm, high)),
  ]
}

/** Where a bow stands: it leaves `at` to the right (or left) and comes back `spacingMm` above. */
export interface BowPlace {
  readonly at: Point
  readonly spacingMm: number
  /** Of the lower and the upper quarter. */
  readonly radiiMm: readonly [number, number]
  readonly side: 'right' | 'left'
  readonly diameterMm: number
}

/**
 * A bow of two quarters and the piece across: outer wall, inner wall and centre line. The quarters may start at
 * different x, so the tighter one gets a straight to reach the piece across.
 *
 * @example bowShapes({ at: point(60, 0), spacingMm: 38, radiiMm: [19, 19], side: 'right', diameterMm: 18 })
 */
export function bowShapes(bow: BowPlace): readonly Shape[] {
  const half = bow.diameterMm / 2
  return [...bowLine(bow, 'outline', half), ...bowLine(bow, 'outline', -half), ...bowLine(bow, 'centre', 0)]
}

/** One line of a bow, `outwardMm` outside its centre line. */
function bowLine(bow: BowPlace, stroke: StrokeKind, outwardMm: number): readonly Shape[] {
  const sign = bow.side === 'right' ? 1 : -1
  const [lower, upper] = bow.radiiMm
  const reachMm = Math.max(lower, upper)
  const top = bow.at.yMm + bow.spacingMm
  const centres = [
    point(bow.at.xMm + sign * (reachMm - lower), bow.at.yMm + lower),
    point(bow.at.xMm + sign * (reachMm - upper), top - upper),
  ] as const
  const acrossX = bow.at.xMm + sign * (reachMm + outwardMm)
  return [
    ...quarter(stroke, centres[0], lower + outwardMm, bow.side === 'right' ? 270 : 180),
    ...quarter(stroke, centres[1], upper + outwardMm, bow.side === 'right' ? 0 : 90),
    ...stretch(stroke, point(acrossX, centres[0].yMm), point(acrossX, centres[1].yMm)),
    ...stretch(
      stroke,
      point(bow.at.xMm, bow.at.yMm - outwardMm),
      point(centres[0].xMm, bow.at.yMm - outwardMm),
    ),
    ...stretch(stroke, point(bow.at.xMm, top + outwardMm), point(centres[1].xMm, top + outwardMm)),
  ]
}

/** A quarter circle; none where the wall would turn inside out, as in a bow tighter than its tube. */
function quarter(stroke: StrokeKind, centre: Point, radiusMm: number, startDegrees: number): readonly Arc[] {
  if (radiusMm <= 0) return []
  return [{ kind: 'arc', stroke, centre, radiusMm, startDegrees, endDegrees: startDegrees + 90 }]
}

function stretch(stroke: StrokeKind, from: Point, to: Point): readonly Line[] {
  const lengthMm = Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm)
  return lengthMm < 1e-9 ? [] : [line(stroke, from, to)]
}
