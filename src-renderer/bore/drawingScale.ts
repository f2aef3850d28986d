import { boreOutline } from '#shared/bore/outline.ts'
import type { BoreSection } from '#shared/bore/section.ts'

/** A bore's drawing: where things lie, CSS px. */
export interface DrawnBore {
  readonly pxPerMm: number
  /** Times that diameters are drawn larger than lengths. */
  readonly stretch: number
  readonly axisPx: number
  readonly heightPx: number
  /** The wall above the axis and below it. */
  readonly upper: string
  readonly lower: string
  /** Where each section begins, and the end of the last. */
  readonly jointsPx: readonly number[]
  readonly jointsMm: readonly number[]
  readonly valvesPx: number | null
  /** Half the drawn diameter at the valves and at the mouth. */
  readonly valvesHalfPx: number
  readonly mouthHalfPx: number
}

/** A joint that can be moved: it lies between sections that both have a length to give. */
export interface MovableJoint {
  /** The section before it. */
  readonly index: number
  readonly next: number
  readonly atMm: number
  readonly atPx: number
  /** Row of its handle, where neighbours are too close. */
  readonly row: number
}

/** Room at both ends of the drawing, CSS px. */
export const besidePx = 16
const abovePx = 24
const belowPx = 30
const mostStretchedPx = 240
/** A wide drawing may be higher, by this share of its width. */
const mostStretchedShare = 0.2
const stretches = [20, 15, 10, 8, 6, 5, 4, 3, 2]

/**
 * The drawing of a bore over a width, to scale or with diameters stretched as far as there is room: the widest no more
 * than `mostPx`.
 */
export function drawnBore(
  sections: readonly BoreSection[],
  widthPx: number,
  stretched: boolean,
  mostPx = Math.max(mostStretchedPx, mostStretchedShare * widthPx),
): DrawnBore {
  const { points, jointsMm, valvesAtMm } = boreOutline(sections)
  const pxPerMm = (widthPx - 2 * besidePx) / Math.max(jointsMm.at(-1) ?? 1, 1)
  const widestPx = points.reduce((most, [, diameter]) => Math.max(most, diameter), 1) * pxPerMm
  const stretch = stretched ? (stretches.find((times) => widestPx * times <= mostPx) ?? 1) : 1
  const halfPx = Math.max((widestPx * stretch) / 2, 12)
  const axisPx = abovePx + halfPx
  const x = (mm: number): number => besidePx + mm * pxPerMm
  const half = (diameterMm: number): number => (diameterMm / 2) * pxPerMm * stretch
  const places = thinned(points.map(([mm, diameter]) => [x(mm), half(diameter)] as const))
  const path = (sign: 1 | -1): string =>
    places
      .map(([px, r], i) => `${i === 0 ? 'M' : 'L'}${px.toFixed(2)} ${(axisPx + sign * r).toFixed(2)}`)
      .join('')
  const valves = sections.find(({ kind }) => kind === 'valves')
  return {
    pxPerMm,
    stretch,
    axisPx,
    heightPx: axisPx + halfPx + belowPx,
    upper: path(-1),
    lower: path(1),
    jointsMm,
    jointsPx: jointsMm.map(x),
    valvesPx: valvesAtMm === null ? null : x(valvesAtMm),
    valvesHalfPx: valves?.kind === 'valves' ? half(valves.diameterMm) : 0,
    mouthHalfPx: places.at(-1)?.[1] ?? 0,
  }
}

/** Without the points that no eye tells from the one before: a measured profile may have thousands. */
function thinned(places: readonly (readonly [number, number])[]): readonly (readonly [number, number])[] {
  const kept: (readonly [number, number])[] = []
  for (const [i, place] of places.entries()) {
    const last = kept.at(-1)
    const near =
      last !== undefined && Math.abs(place[0] - last[0]) < 0.4 && Math.abs(place[1] - last[1]) < 0.2
    if (!near || i === places.length - 1) kept.push(place)
  }
  return kept
}

/** Handles nearer to each other than this stand in different rows, CSS px. */
const handlePx = 15

/** The joints of a bore that can be moved. */
export function movableJoints(sections: readonly BoreSection[], drawn: DrawnBore): readonly MovableJoint[] {
  const joints: MovableJoint[] = []
  for (const [index, section] of sections.entries()) {
    const next = sections.findIndex((each, i) => i > index && each.kind !== 'valves' && each.kind !== 'cup')
    const after = sections[next]
    if (!('lengthMm' in section) || after === undefined || !('lengthMm' in after)) continue
    const [atMm, atPx] = [drawn.jointsMm[index + 1]!, drawn.jointsPx[index + 1]!]
    const before = joints.at(-1)
    const crowded = before !== undefined && atPx - before.atPx < handlePx && before.row === 0
    joints.push({ index, next, atMm, atPx, row: crowded ? 1 : 0 })
  }
  return joints
}
