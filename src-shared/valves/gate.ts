import type { Gate } from './loop.ts'

/** A gate as two sets of bits over a design's valves: bit i is the i-th valve. */
export interface GateBits {
  readonly pressed: number
  readonly released: number
}

/**
 * The bits of some valve ids, bit i for the i-th valve of `valveIds` (12 at most). Ids that are not there count
 * for nothing: opening a design has refused them.
 *
 * @example valveBits(['1', '2', '3'], ['1', '3']) // 0b101
 */
export function valveBits(valveIds: readonly string[], ids: readonly string[]): number {
  let bits = 0
  for (const id of ids) {
    const at = valveIds.indexOf(id)
    if (at >= 0) bits |= 1 << at
  }
  return bits
}

/** The bits of a gate over `valveIds`. */
export function gateBits(valveIds: readonly string[], gate: Gate): GateBits {
  return { pressed: valveBits(valveIds, gate.pressed), released: valveBits(valveIds, gate.released ?? []) }
}

/**
 * Whether the loop behind a gate lies in the air route when the valves in `down` are pressed: all of its pressed
 * valves are down and all of its released ones up.
 *
 * @example liesInRoute({ pressed: 0b01, released: 0b10 }, 0b01) // true
 */
export function liesInRoute(gate: GateBits, down: number): boolean {
  return (gate.pressed & ~down) === 0 && (gate.released & down) === 0
}

/**
 * A gate in plain words, as a bench would say it.
 *
 * @example gateWords({ pressed: ['1', '4'], released: ['T'] }) // '1 and 4 down, T up'
 */
export function gateWords(gate: Gate): string {
  const parts: string[] = []
  if (gate.pressed.length > 0) parts.push(`${listWords(gate.pressed)} down`)
  if (gate.released !== undefined && gate.released.length > 0) parts.push(`${listWords(gate.released)} up`)
  return parts.length === 0 ? 'always in' : parts.join(', ')
}

function listWords(ids: readonly string[]): string {
  const last = ids.at(-1) ?? ''
  return ids.length < 2 ? last : `${ids.slice(0, -1).join(', ')} and ${last}`
}
