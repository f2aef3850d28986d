import { type Fingering, fingeringName } from './fingering.ts'
import { sumOfDrops } from './nominalDrop.ts'
import type { Valve } from './valve.ts'

/** A fingering with everything that follows from its valves. */
export interface NamedFingering {
  readonly name: string
  /** Valve ids in the design's order. */
  readonly pressed: readonly string[]
  readonly semitones: number
  /** Bit i is the i-th valve. */
  readonly down: number
}

/**
 * The fingerings of a design, named and completed: every subset of the valves (`all`), fewest valves first, or
 * the list given, in its order. Nominal drops default to the sum of the valves'.
 *
 * @example fingeringsOf([{ id: '1', semitones: 2 }], 'all').map((f) => f.name) // ['0', '1']
 */
export function fingeringsOf(
  valves: readonly Valve[],
  fingerings: 'all' | readonly Fingering[],
): readonly NamedFingering[] {
  if (fingerings === 'all') return everyFingering(valves)
  return fingerings.map((fingering) => {
    const down = valves.reduce(
      (bits, valve, i) => (fingering.pressed.includes(valve.id) ? bits | (1 << i) : bits),
      0,
    )
    return namedFingering(valves, down, fingering.semitones)
  })
}

/** The fingering whose valves are the set of bits `down`; its nominal drop is the valves' sum unless given. */
export function namedFingering(valves: readonly Valve[], down: number, semitones?: number): NamedFingering {
  const together = valves.filter((_, i) => (down & (1 << i)) !== 0)
  const pressed = together.map(({ id }) => id)
  return { name: fingeringName(pressed), pressed, semitones: semitones ?? sumOfDrops(together), down }
}

/** Values are never changed, so the same valves have the same fingerings: a loop is dragged, its valves are not. */
const known = new WeakMap<readonly Valve[], readonly NamedFingering[]>()

function everyFingering(valves: readonly Valve[]): readonly NamedFingering[] {
  const present = known.get(valves)
  if (present !== undefined) return present
  const all: NamedFingering[] = []
  for (let down = 0; down < 1 << valves.length; down++) all.push(namedFingering(valves, down))
  all.sort((a, b) => a.pressed.length - b.pressed.length || firstDifference(a.down, b.down))
  known.set(valves, all)
  return all
}

/** Of two sets of equal size, the one that has the lowest valve in which they differ comes first. */
function firstDifference(a: number, b: number): number {
  const differing = a ^ b
  if (differing === 0) return 0
  return (a & differing & -differing) !== 0 ? -1 : 1
}
