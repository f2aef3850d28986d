import type { Fingering } from '../fingering.ts'
import type { Loop } from '../loop.ts'
import type { Valve } from '../valve.ts'

/** What a system adds to an instrument: its valves, its loops with their gates, and the fingerings in use. */
export interface SystemParts {
  readonly valves: readonly Valve[]
  readonly loops: readonly Loop[]
  readonly fingerings: 'all' | readonly Fingering[]
}

/** Ordinal names of loops, as a bench would call them. */
const ordinals = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
  'eleventh',
  'twelfth',
]

/**
 * The name of the i-th valve's loop, counting from 0.
 *
 * @example ordinal(2) // 'third'
 */
export function ordinal(index: number): string {
  return ordinals[index] ?? `${index + 1}th`
}

/** Valves `1`, `2`, … with the given drops in semitones. */
export function numberedValves(drops: readonly number[]): readonly Valve[] {
  return drops.map((semitones, i) => ({ id: String(i + 1), semitones }))
}

/** Every valve used by itself, with the open route before them. */
export function oneAtATime(valves: readonly Valve[]): readonly Fingering[] {
  return [{ pressed: [] }, ...valves.map((valve) => ({ pressed: [valve.id] }))]
}
