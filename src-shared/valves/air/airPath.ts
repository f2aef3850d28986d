import { liesInRoute } from '../gate.ts'
import { companyOf, type ValvePlan } from './valvePlan.ts'

/** The air goes through one valve, or past the loops that are always in, in one of its passages. */
export interface AirPassage {
  /** Index of the valve; `null` for the loops ahead of the valves. */
  readonly valve: number | null
  readonly pass: number
  /** Ids of the loops it goes through there, in order; none when it goes straight on. */
  readonly loops: readonly string[]
}

/**
 * The way of the air from mouthpiece to bell with the valves in the set of bits `down` pressed: the loops that are
 * always in, the valves in their order, and those of the block again for each further passage that the pressed
 * valves open. Its loops are the loops of the route, each once.
 *
 * @example airPath(valvePlan(valves, loops), 0b101).flatMap(({ loops }) => loops) // ['L1', 'L3', 'C1']
 */
export function airPath(plan: ValvePlan, down: number): readonly AirPassage[] {
  const at = (valve: number | null, pass: number): AirPassage => ({
    valve,
    pass,
    loops: loopsAt(plan, valve, pass, down),
  })
  const ahead = plan.placed.some(({ valve }) => valve === null) ? [at(null, 0)] : []
  const block = passagesOpen(plan, down).flatMap((pass) =>
    plan.valves.slice(0, plan.blockEnd + 1).map((_, valve) => at(valve, pass)),
  )
  const behind = plan.valves.slice(plan.blockEnd + 1).map((_, i) => at(plan.blockEnd + 1 + i, 0))
  return [...ahead, ...block, ...behind]
}

/**
 * The passages that the air makes through the block of valves: the first always, a further one when the company
 * that some loop of it asks for is there, whether or not the loop's own valve is down.
 *
 * @example passagesOpen(planOfCompensating, 0b1000) // [0, 1]: the fourth valve sends the air back
 */
export function passagesOpen(plan: ValvePlan, down: number): readonly number[] {
  return Array.from({ length: plan.passes }, (_, pass) => pass).filter(
    (pass) =>
      pass === 0 ||
      plan.placed.some((placed) => placed.pass === pass && liesInRoute(companyOf(placed), down)),
  )
}

function loopsAt(plan: ValvePlan, valve: number | null, pass: number, down: number): readonly string[] {
  return plan.placed
    .filter((placed) => placed.valve === valve && placed.pass === pass && liesInRoute(placed.gate, down))
    .map(({ loop }) => loop.id)
}
