import { loopForDropMm, requiredLengthMm } from '../../tubing/requiredLength.ts'
import type { Loop } from '../loop.ts'
import type { Valve } from '../valve.ts'
import { numberedValves, ordinal, type SystemParts } from './parts.ts'

const changeValve = 'T'

/**
 * Full double: a change valve T chooses the long or the short side, and each valve has a loop on either side.
 * The open length is the long side's, and contains the tube that T takes away.
 *
 * @param drops nominal drops of the valves, semitones
 * @param rise semitones from the long side up to the short side, above 0
 */
export function fullDouble(openLengthMm: number, drops: readonly number[], rise: number): SystemParts {
  const shortMm = requiredLengthMm(openLengthMm, -rise)
  const long = drops.map((drop, i) => side('long', i, loopForDropMm(openLengthMm, drop)))
  const short = drops.map((drop, i) => side('short', i, loopForDropMm(shortMm, drop)))
  return { ...doubleOf(drops, rise), loops: [longBody(openLengthMm, shortMm), ...long, ...short] }
}

/**
 * Compensating double: the short side's loops serve both sides, and a further loop for each valve joins them
 * when T is up.
 */
export function compensatingDouble(
  openLengthMm: number,
  drops: readonly number[],
  rise: number,
): SystemParts {
  const shortMm = requiredLengthMm(openLengthMm, -rise)
  const main = drops.map((drop, i) => ({
    id: `main ${i + 1}`,
    name: `${ordinal(i)}, both sides`,
    lengthMm: loopForDropMm(shortMm, drop),
    pressed: [String(i + 1)],
  }))
  const extra = drops.map((drop, i) => ({
    id: `extra ${i + 1}`,
    name: `${ordinal(i)}, long side more`,
    lengthMm: loopForDropMm(openLengthMm, drop) - main[i]!.lengthMm,
    pressed: [String(i + 1)],
    released: [changeValve],
  }))
  return { ...doubleOf(drops, rise), loops: [longBody(openLengthMm, shortMm), ...main, ...extra] }
}

function doubleOf(drops: readonly number[], rise: number): { valves: readonly Valve[]; fingerings: 'all' } {
  return { valves: [...numberedValves(drops), { id: changeValve, semitones: -rise }], fingerings: 'all' }
}

function longBody(openLengthMm: number, shortMm: number): Loop {
  return {
    id: 'long body',
    name: 'long side',
    lengthMm: openLengthMm - shortMm,
    pressed: [],
    released: [changeValve],
  }
}

function side(name: 'long' | 'short', index: number, lengthMm: number): Loop {
  const valve = String(index + 1)
  const loop = { id: `${name} ${valve}`, name: `${ordinal(index)}, ${name} side`, lengthMm }
  return name === 'long'
    ? { ...loop, pressed: [valve], released: [changeValve] }
    : { ...loop, pressed: [valve, changeValve] }
}
