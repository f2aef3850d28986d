import { type GateBits, gateBits } from '../gate.ts'
import type { Loop } from '../loop.ts'
import type { Valve } from '../valve.ts'

/** Where a loop hangs: at which valve, and in which passage of the air through that valve. */
export interface PlacedLoop {
  readonly loop: Loop
  readonly gate: GateBits
  /** Index of the valve it hangs at; `null` for a loop that is always in, which lies ahead of the valves. */
  readonly valve: number | null
  /** 0 the first time the air goes through its valve, 1 the second, and so on. */
  readonly pass: number
}

/** A valve system laid out along the air, worked out from the gates alone. */
export interface ValvePlan {
  readonly valves: readonly Valve[]
  /** In the design's order of loops. */
  readonly placed: readonly PlacedLoop[]
  /** How often the air may go through the valves: 1 unless some loops lie in a further passage. */
  readonly passes: number
  /** Index of the last valve of the block that the air goes through more than once; −1 when there is none. */
  readonly blockEnd: number
}

/**
 * Lays a system out from its gates. A loop hangs at one valve of its gate: of the pressed ones (of the released
 * ones when none is pressed) the valve that the fewest loops name, the first of several. Two loops of one valve
 * that may lie in the route together, one of them only in company, need two passages through that valve: that is
 * how a compensating system sends the air through its valves a second time. Loops that exclude each other share
 * a passage.
 *
 * @param loops gates over valves that exist; opening a design has refused others
 * @example valvePlan(valves, loops).passes // 2 for a compensating system, 1 for a plain one
 */
export function valvePlan(valves: readonly Valve[], loops: readonly Loop[]): ValvePlan {
  const valveIds = valves.map(({ id }) => id)
  const gates = loops.map((loop) => gateBits(valveIds, loop))
  const homes = gates.map((gate) => homeOf(gate, gates, valves.length))
  const passOf = passesOf(gates, homes)
  const placed = loops.map((loop, i) => ({ loop, gate: gates[i]!, valve: homes[i]!, pass: passOf[i]! }))
  const again = placed.filter(({ pass }) => pass > 0)
  return {
    valves,
    placed,
    passes: 1 + again.reduce((most, { pass }) => Math.max(most, pass), 0),
    blockEnd: again.reduce((last, { gate }) => Math.max(last, highestBit(named(gate))), -1),
  }
}

/**
 * The part of a loop's gate that its own valve has no say in: what company it asks for.
 *
 * @example companyOf({ gate: { pressed: 0b1001, released: 0 }, valve: 0 }) // { pressed: 0b1000, released: 0 }
 */
export function companyOf({ gate, valve }: Pick<PlacedLoop, 'gate' | 'valve'>): GateBits {
  const others = valve === null ? -1 : ~(1 << valve)
  return { pressed: gate.pressed & others, released: gate.released & others }
}

function homeOf(gate: GateBits, gates: readonly GateBits[], valveCount: number): number | null {
  const candidates = gate.pressed !== 0 ? gate.pressed : gate.released
  let home: number | null = null
  let fewest = Number.POSITIVE_INFINITY
  for (let valve = 0; valve < valveCount; valve++) {
    if ((candidates & (1 << valve)) === 0) continue
    const count = gates.filter((each) => (named(each) & (1 << valve)) !== 0).length
    if (count >= fewest) continue
    home = valve
    fewest = count
  }
  return home
}

/** The passage of each loop: those that ask for no company first, then each where it excludes all others. */
function passesOf(gates: readonly GateBits[], homes: readonly (number | null)[]): readonly number[] {
  const asksNothing = (i: number): boolean => named(companyOf({ gate: gates[i]!, valve: homes[i]! })) === 0
  const passes = gates.map(() => 0)
  const settled = gates.map((_, i) => i).filter(asksNothing)
  for (let i = 0; i < gates.length; i++) {
    if (asksNothing(i)) continue
    const beside = settled.filter((other) => homes[other] === homes[i])
    let pass = 0
    while (beside.some((other) => passes[other] === pass && !exclude(gates[other]!, gates[i]!))) pass++
    passes[i] = pass
    settled.push(i)
  }
  return passes
}

/** Whether no setting of the valves has both loops in the route. */
function exclude(a: GateBits, b: GateBits): boolean {
  return (a.pressed & b.released) !== 0 || (b.pressed & a.released) !== 0
}

function named({ pressed, released }: GateBits): number {
  return pressed | released
}

function highestBit(bits: number): number {
  return 31 - Math.clz32(bits)
}
