import type { Loop } from '../valves/loop.ts'
import type { Combination } from './combinations.ts'

/** One fingering laid out as a ruler: the tube it has, piece by piece, against the tube it needs. */
export interface RulerRow {
  readonly fingering: string
  readonly semitones: number
  /** The loops in the route, in the design's order, with their tube. */
  readonly pieces: readonly RulerPiece[]
  readonly lengthMm: number
  readonly requiredLengthMm: number
  /** Tube that is missing, mm; negative when there is too much. */
  readonly missingMm: number
  readonly errorCents: number
}

/** One loop of a row, with its length, mm of tube. */
export interface RulerPiece {
  readonly loop: string
  /** What a person calls the loop. */
  readonly name: string
  /** The valves that bring it in, `1-4`: its name in short. */
  readonly valves: string
  readonly lengthMm: number
}

/** Rulers of some fingerings on one body. */
export interface TubeRuler {
  /** Tube that is in every route, mm. */
  readonly bodyMm: number
  readonly rows: readonly RulerRow[]
  /** Tube beyond the body, from the least (never above 0) to the most that a row has or needs, mm. */
  readonly reachMm: readonly [number, number]
}

/**
 * The rulers of some rows of the combination table.
 *
 * @param bodyMm tube that no gate switches, mm
 * @param loops the design's loops
 * @example tubeRuler(4000, loops, combinations).rows[1]?.pieces // [{ loop: 'L1', name: 'first', lengthMm: 489.8… }]
 */
export function tubeRuler(
  bodyMm: number,
  loops: readonly Pick<Loop, 'id' | 'name' | 'lengthMm' | 'pressed'>[],
  combinations: readonly Combination[],
): TubeRuler {
  const known = new Map(loops.map((loop) => [loop.id, loop]))
  const rows = combinations.map((row) => ({
    fingering: row.fingering,
    semitones: row.semitones,
    pieces: row.loops.map((loop) => {
      const { name = loop, lengthMm = 0, pressed = [] } = known.get(loop) ?? {}
      return { loop, name, valves: pressed.join('-'), lengthMm }
    }),
    lengthMm: row.lengthMm,
    requiredLengthMm: row.requiredLengthMm,
    missingMm: row.requiredLengthMm - row.lengthMm,
    errorCents: row.errorCents,
  }))
  const ends = rows.flatMap(({ lengthMm, requiredLengthMm }) => [
    lengthMm - bodyMm,
    requiredLengthMm - bodyMm,
  ])
  return { bodyMm, rows, reachMm: [ends.reduce(lesser, 0), ends.reduce(greater, 0)] }
}

function lesser(a: number, b: number): number {
  return Math.min(a, b)
}

function greater(a: number, b: number): number {
  return Math.max(a, b)
}
