import { gateBits, liesInRoute, valveBits } from '../valves/gate.ts'
import type { Gate, Loop } from '../valves/loop.ts'

/**
 * How many times a gate's loop counts in a route beyond the open route, which contains the loops that lie in it
 * already: 1 when the fingering switches it in, −1 when it switches it out, 0 when it changes nothing.
 *
 * @example switchedBy({ pressed: [], released: ['1'] }, ['1']) // -1
 */
export function switchedBy(gate: Gate, pressed: readonly string[]): number {
  const valveIds = [...gate.pressed, ...(gate.released ?? [])]
  const bits = gateBits(valveIds, gate)
  return Number(liesInRoute(bits, valveBits(valveIds, pressed))) - Number(liesInRoute(bits, 0))
}

/** Tube that a fingering adds to the open route, mm; negative when it shortens it. */
export function tubeInRouteMm(loops: readonly Loop[], pressed: readonly string[]): number {
  return loops.reduce((sum, loop) => sum + switchedBy(loop, pressed) * loop.lengthMm, 0)
}
