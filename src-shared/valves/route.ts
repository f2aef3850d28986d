import { type GateBits, gateBits, liesInRoute, switchedBy, valveBits } from './gate.ts'
import type { Loop } from './loop.ts'
import type { Valve } from './valve.ts'

/** A valve system ready for routing: gates as bits, loop lengths, and the tube that is in every route. */
export interface Routing {
  readonly valveIds: readonly string[]
  readonly loops: readonly Loop[]
  readonly gates: readonly GateBits[]
  /** The part of the instrument that no gate switches, mm: the open length less the loops in the open route. */
  readonly bodyMm: number
}

/**
 * Prepares a system for routing. The open length already contains the loops that lie in the open route.
 *
 * @param openLengthMm effective length of the open route, mm
 */
export function routing(openLengthMm: number, valves: readonly Valve[], loops: readonly Loop[]): Routing {
  const valveIds = valves.map((valve) => valve.id)
  const gates = loops.map((loop) => gateBits(valveIds, loop))
  let bodyMm = openLengthMm
  for (let i = 0; i < loops.length; i++) {
    if (liesInRoute(gates[i]!, 0)) bodyMm -= loops[i]!.lengthMm
  }
  return { valveIds, loops, gates, bodyMm }
}

/** The loops that lie in the route when the valves in the set of bits `down` are pressed, in the design's order. */
export function loopsInRoute(system: Routing, down: number): readonly Loop[] {
  return system.loops.filter((_, i) => liesInRoute(system.gates[i]!, down))
}

/** Length of the route, mm along the centre line: the body and the loops that lie in it. */
export function routeLengthMm(system: Routing, down: number): number {
  let lengthMm = system.bodyMm
  for (let i = 0; i < system.loops.length; i++) {
    if (liesInRoute(system.gates[i]!, down)) lengthMm += system.loops[i]!.lengthMm
  }
  return lengthMm
}

/**
 * Tube that a fingering adds to the open route, mm; negative when it shortens it.
 *
 * @example tubeInRouteMm([{ id: 'L1', lengthMm: 486, pressed: ['1'] }], ['1']) // 486
 */
export function tubeInRouteMm(loops: readonly Loop[], pressed: readonly string[]): number {
  return loops.reduce((sum, loop) => sum + switchedBy(loop, pressed) * loop.lengthMm, 0)
}

/** The set of bits of a fingering's valves. */
export function bitsOf(system: Routing, pressed: readonly string[]): number {
  return valveBits(system.valveIds, pressed)
}
