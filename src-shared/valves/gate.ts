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
 * As `liesInRoute`, for ids: whether the loop behind a gate lies in the route when these valves are pressed. For
 * many gates at once take bits.
 *
 * @example liesInRouteOf({ pressed: ['1'], released: ['2'] }, ['1', '3']) // true
 */
export function liesInRouteOf(gate: Gate, pressed: readonly string[]): boolean {
  const isDown = (id: string): boolean => pressed.includes(id)
  return gate.pressed.every(isDown) && !(gate.released ?? []).some(isDown)
}

/**
 * How many times a gate's loop counts in a route beyond the open route, which contains the loops that lie in it
 * already: 1 when the fingering switches it in, −1 when it switches it out, 0 when it changes nothing.
 *
 * @example switchedBy({ pressed: [], released: ['1'] }, ['1']) // -1
 */
export function switchedBy(gate: Gate, pressed: readonly string[]): number {
  return Number(liesInRouteOf(gate, pressed)) - Number(liesInRouteOf(gate, []))
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
