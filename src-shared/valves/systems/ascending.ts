import { requiredLengthMm } from '../../tubing/requiredLength.ts'
import { ordinal, type SystemParts } from './parts.ts'
import { plain } from './plain.ts'

/**
 * Plain system whose last valve ascends: at rest its loop lies in the open route, and pressing the valve takes
 * it out.
 *
 * @param drops drops of the descending valves, semitones
 * @param rise semitones that the ascending valve raises the open instrument, above 0
 * @example ascending(2000, [2, 1], 2).loops.at(-1) // { lengthMm: 218.20…, released: ['3'], … }
 */
export function ascending(openLengthMm: number, drops: readonly number[], rise: number): SystemParts {
  const base = plain(openLengthMm, drops)
  const id = String(drops.length + 1)
  const loop = {
    id: `L${id}`,
    name: `${ordinal(drops.length)}, ascending`,
    lengthMm: openLengthMm - requiredLengthMm(openLengthMm, -rise),
    pressed: [],
    released: [id],
  }
  return {
    valves: [...base.valves, { id, semitones: -rise }],
    loops: [...base.loops, loop],
    fingerings: 'all',
  }
}
