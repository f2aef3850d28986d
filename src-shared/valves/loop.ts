/** A valve slide's position: `outMm` is movement (not tube; its 2× is already inside the loop's length). */
export interface SlidePosition {
  readonly outMm: number
  /** Farthest movement out, mm. */
  readonly travelMm: number
}

/** Which valves must be down and which up for a loop to lie in the air route. */
export interface Gate {
  /** Ids of the valves that must all be down. */
  readonly pressed: readonly string[]
  /** Ids of the valves that must all be up; none when absent. */
  readonly released?: readonly string[]
}

/** A piece of tubing with a gate. `lengthMm` is tube along the centre line, the slide where it stands now. */
export interface Loop extends Gate {
  readonly id: string
  readonly name?: string
  readonly lengthMm: number
  readonly diameterMm?: number
  /** Centre-line radius of its bow, mm, for the acoustic bore: π times it of the length is bent. */
  readonly bendRadiusMm?: number
  readonly slide?: SlidePosition
}

/**
 * What a person calls the loop of an id: its name where it has one.
 *
 * @example loopNamed([{ id: 'L1', name: 'first' }], 'L1') // 'first'
 */
export function loopNamed(loops: readonly Pick<Loop, 'id' | 'name'>[], id: string): string {
  return loops.find((loop) => loop.id === id)?.name ?? id
}
