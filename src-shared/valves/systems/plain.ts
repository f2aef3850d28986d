import { loopForDropMm, requiredLengthMm } from '../../tubing/requiredLength.ts'
import type { Loop } from '../loop.ts'
import { numberedValves, ordinal, type SystemParts } from './parts.ts'

/**
 * Plain system: one loop a valve, each exact when it is used alone. Any number of valves up to 12, in any order.
 *
 * @param drops nominal drop of each valve, semitones
 * @example plain(2000, [2, 1, 3]).loops.map((loop) => loop.lengthMm) // [244.9…, 118.9…, 378.4…]
 */
export function plain(openLengthMm: number, drops: readonly number[]): SystemParts {
  const valves = numberedValves(drops)
  return {
    valves,
    loops: drops.map((drop, i) => plainLoop(i, loopForDropMm(openLengthMm, drop))),
    fingerings: 'all',
  }
}

/**
 * Plain system with long valves after the fourth: their loops are made for the company of the fourth valve,
 * so that they are exact together with it and long alone.
 *
 * @param drops drops of the valves up to the fourth, semitones
 * @param longDrops drops of the long valves, semitones
 */
export function plainWithLongValves(
  openLengthMm: number,
  drops: readonly number[],
  longDrops: readonly number[],
): SystemParts {
  const base = plain(openLengthMm, drops)
  const inCompanyMm = requiredLengthMm(openLengthMm, drops.at(-1) ?? 0)
  const long = longDrops.map((drop, i) => plainLoop(drops.length + i, loopForDropMm(inCompanyMm, drop)))
  return {
    valves: numberedValves([...drops, ...longDrops]),
    loops: [...base.loops, ...long],
    fingerings: 'all',
  }
}

/** Loop `L3` named `third`, in the route when valve `3` is down. */
export function plainLoop(index: number, lengthMm: number): Loop {
  const valve = String(index + 1)
  return { id: `L${valve}`, name: ordinal(index), lengthMm, pressed: [valve] }
}
