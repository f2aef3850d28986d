import type { Gate, Loop } from '../valves/loop.ts'

/** Whether a gate is open to the air with these valves down and all others up. */
export function lies(gate: Gate, pressed: readonly string[]): boolean {
  const isDown = (id: string) => pressed.includes(id)
  return gate.pressed.every(isDown) && !(gate.released ?? []).some(isDown)
}

/**
 * How many times a gate's loop counts in a route beyond the open route, which contains the loops that lie in it
 * already: 1 when the fingering switches it in, −1 when it switches it out, 0 when it changes nothing.
 *
 * @example switchedBy({ pressed: [], released: ['1'] }, ['1']) // -1
 */
export function switchedBy(gate: Gate, pressed: readonly string[]): number {
  return Number(lies(gate, pressed)) - Number(lies(gate, []))
}

/** Tube that a fingering adds to the open route, mm; negative when it shortens it. */
export function tubeInRouteMm(loops: readonly Loop[], pressed: readonly string[]): number {
  return loops.reduce((sum, loop) => sum + switchedBy(loop, pressed) * loop.lengthMm, 0)
}
