import type { SlidePosition } from '../../valves/loop.ts'

/** What a loop's slide is to do for a change of its tube. */
export interface SlideMove {
  readonly way: 'in' | 'out'
  /** Movement that it can make of what is asked, mm. */
  readonly movementMm: number
  /** Tube that is left over, mm; 0 when the slide can do it all. */
  readonly leftMm: number
}

/**
 * The movement for a change of a loop's tube, half of it. A slide whose place is known is not asked for more than it can
 * do: what it leaves over is told, in tube.
 *
 * @param changeMm tube to add; negative to take off
 * @example slideMove(-12, { outMm: 2, travelMm: 30 }) // { way: 'in', movementMm: 2, leftMm: 8 }
 */
export function slideMove(changeMm: number, slide?: SlidePosition): SlideMove {
  const way = changeMm < 0 ? 'in' : 'out'
  const wantedMm = Math.abs(changeMm) / 2
  const movementMm = slide === undefined ? wantedMm : Math.min(wantedMm, roomMm(slide, way))
  return { way, movementMm, leftMm: 2 * (wantedMm - movementMm) }
}

/** Movement that a slide has left on one side. */
function roomMm({ outMm, travelMm }: SlidePosition, way: 'in' | 'out'): number {
  return Math.max(0, way === 'in' ? outMm : travelMm - outMm)
}
