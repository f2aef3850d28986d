import { loopForDropMm, requiredLengthMm } from '../../tubing/requiredLength.ts'
import { fingeringsOf } from '../fingerings.ts'
import type { Loop } from '../loop.ts'
import { numberedValves, oneAtATime, ordinal, type SystemParts } from './parts.ts'

/**
 * Independent by step: one loop a valve, valves used one at a time, so that nothing is ever added up.
 *
 * @param drops nominal drop of each valve, semitones
 */
export function independentByStep(openLengthMm: number, drops: readonly number[]): SystemParts {
  const valves = numberedValves(drops)
  const loops = drops.map((drop, i) => ({
    id: `loop ${i + 1}`,
    name: ordinal(i),
    lengthMm: loopForDropMm(openLengthMm, drop),
    pressed: [String(i + 1)],
  }))
  return { valves, loops, fingerings: oneAtATime(valves) }
}

/**
 * Independent by combination: each combination of valves opens a loop of its own and no other, so every
 * fingering can be exact. It takes a loop for each of the 2^n − 1 combinations.
 *
 * @param drops nominal drop of each valve, semitones; at most 7 valves, for a design holds 200 loops
 */
export function independentByCombination(openLengthMm: number, drops: readonly number[]): SystemParts {
  const valves = numberedValves(drops)
  const loops = fingeringsOf(valves, 'all')
    .slice(1)
    .map(({ name, pressed, semitones }): Loop => {
      const others = valves.map((valve) => valve.id).filter((id) => !pressed.includes(id))
      const loop = { id: `loop ${name}`, name, lengthMm: loopForDropMm(openLengthMm, semitones), pressed }
      return others.length === 0 ? loop : { ...loop, released: others }
    })
  return { valves, loops, fingerings: 'all' }
}

/**
 * Cut-off: open is the longest route. Tubes lie in series, and each valve cuts off its own tube and all that
 * follow the line below it; valves are used one at a time, the first the shortest.
 *
 * @param steps number of valves, each a semitone
 * @example cutOff(2000, 6).valves[0] // { id: '1', semitones: -6 }
 */
export function cutOff(openLengthMm: number, steps: number): SystemParts {
  const valves = numberedValves(Array.from({ length: steps }, (_, i) => i - steps))
  const lengthAt = (rise: number): number => requiredLengthMm(openLengthMm, -rise)
  const loops = valves.map((_, i) => ({
    id: `step ${i + 1}`,
    name: `${ordinal(i)} tube`,
    lengthMm: lengthAt(steps - i - 1) - lengthAt(steps - i),
    pressed: [],
    released: valves.slice(0, i + 1).map((valve) => valve.id),
  }))
  return { valves, loops, fingerings: oneAtATime(valves) }
}
