import { compensatingLoopMm } from '../../tubing/requiredLength.ts'
import type { Loop } from '../loop.ts'
import { ordinal, type SystemParts } from './parts.ts'
import { plain } from './plain.ts'

/**
 * Compensating system: the plain loops, and for each valve before the switching one a further loop that lies in
 * the route when both are down, sized to make the pair exact.
 *
 * @param drops nominal drop of each valve, semitones; more valves than the switching one may follow, plain
 * @param switching number of the switching valve, counting from 1
 * @example compensating(2000, [2, 1, 3], 3).loops.at(-1) // { id: 'C2', lengthMm: 22.50…, pressed: ['2', '3'], … }
 */
export function compensating(openLengthMm: number, drops: readonly number[], switching: number): SystemParts {
  const base = plain(openLengthMm, drops)
  const at = switching - 1
  const extra: readonly Loop[] = base.loops.slice(0, at).map((loop, i) => ({
    id: `C${i + 1}`,
    name: `${ordinal(i)}, compensating`,
    lengthMm: compensatingLoopMm(
      openLengthMm,
      drops[i]!,
      loop.lengthMm,
      drops[at]!,
      base.loops[at]!.lengthMm,
    ),
    pressed: [String(i + 1), String(switching)],
  }))
  const block = base.loops.slice(0, switching)
  return { ...base, loops: [...block, ...extra, ...base.loops.slice(switching)] }
}
