/** A place on a drawing, mm; x to the right, y up. */
export interface Point {
  readonly xMm: number
  readonly yMm: number
}

/** What a stroke stands for; each becomes a line style on screen and paper and a layer in DXF. */
export const strokeKinds = ['outline', 'hidden', 'centre', 'dimension'] as const
/** One kind of stroke. */
export type StrokeKind = (typeof strokeKinds)[number]

/** A straight stroke between two places. */
export interface Line {
  readonly kind: 'line'
  readonly stroke: StrokeKind
  readonly from: Point
  readonly to: Point
}

/** Part of a circle, anticlockwise from start to end, degrees from the x axis. */
export interface Arc {
  readonly kind: 'arc'
  readonly stroke: StrokeKind
  readonly centre: Point
  readonly radiusMm: number
  readonly startDegrees: number
  readonly endDegrees: number
}

/** Words centred above `at`; turned a quarter anticlockwise when `upright`. */
export interface Label {
  readonly kind: 'label'
  readonly at: Point
  readonly text: string
  readonly heightMm: number
  readonly upright: boolean
}

/** Anything that a drawing is made of. */
export type Shape = Line | Arc | Label

/** A drawing to scale as plain values: what window, print and export share. */
export interface Drawing {
  readonly title: string
  readonly shapes: readonly Shape[]
  readonly bounds: Bounds
}

/** The edges of a drawing, mm; x to the right, y up. */
export interface Bounds {
  readonly leftMm: number
  readonly bottomMm: number
  readonly rightMm: number
  readonly topMm: number
}

/** Makes a point. */
export function point(xMm: number, yMm: number): Point {
  return { xMm, yMm }
}

/** Makes a line. */
export function line(stroke: StrokeKind, from: Point, to: Point): Line {
  return { kind: 'line', stroke, from, to }
}

/** Makes a drawing of its shapes, with a margin on every side. No shapes make an empty drawing of two margins. */
export function drawing(title: string, shapes: readonly Shape[], marginMm: number): Drawing {
  const points = shapes.flatMap(extent)
  const xs = points.map(({ xMm }) => xMm)
  const ys = points.map(({ yMm }) => yMm)
  const [x0, y0] = points.length === 0 ? [0, 0] : [Math.min(...xs), Math.min(...ys)]
  const [x1, y1] = points.length === 0 ? [0, 0] : [Math.max(...xs), Math.max(...ys)]
  const bounds = {
    leftMm: x0 - marginMm,
    bottomMm: y0 - marginMm,
    rightMm: x1 + marginMm,
    topMm: y1 + marginMm,
  }
  return { title, shapes, bounds }
}

/** Points whose bounds hold the shape: for an arc those of its whole circle that it reaches, for words a generous box. */
function extent(shape: Shape): readonly Point[] {
  if (shape.kind === 'line') return [shape.from, shape.to]
  if (shape.kind === 'arc') return arcExtent(shape)
  const alongMm = (shape.text.length * shape.heightMm * 0.62) / 2
  const [dx, dy] = shape.upright ? [shape.heightMm * 1.3, alongMm] : [alongMm, shape.heightMm * 1.3]
  return [point(shape.at.xMm - dx, shape.at.yMm - dy), point(shape.at.xMm + dx, shape.at.yMm + dy)]
}

function arcExtent({ centre, radiusMm, startDegrees, endDegrees }: Arc): readonly Point[] {
  const quarters = [-360, -270, -180, -90, 0, 90, 180, 270, 360, 450]
  const inside = quarters.filter((degrees) => degrees > startDegrees && degrees < endDegrees)
  return [startDegrees, ...inside, endDegrees].map((degrees) => {
    const angle = (degrees * Math.PI) / 180
    return point(centre.xMm + radiusMm * Math.cos(angle), centre.yMm + radiusMm * Math.sin(angle))
  })
}
