import type { NamedFingering } from './fingerings.ts'
import type { Valve } from './valve.ts'

/**
 * Compares fingerings as the trade teaches them: the smallest nominal drop first, and for the same drop 1-2
 * before 3, 4 before 1-3, 2-4 before 1-2-3, otherwise the fewest valves. An ascending or change valve counts
 * with its rise as if it were a drop, so that the long side is taught first and the short side where it helps; of a
 * rise and as big a drop the rise comes first, for it is the shorter tube. Where every valve ascends the open route
 * is the longest, as in a cut-off system, and the shortest tube comes first.
 *
 * @returns a comparison for sorting, total over the fingerings of one design
 */
export function usualOrder(valves: readonly Valve[]): (a: NamedFingering, b: NamedFingering) => number {
  const size = switchedSemitones(valves)
  const burden = valveBurden(valves)
  return (a, b) => size(a) - size(b) || a.semitones - b.semitones || burden(a) - burden(b) || a.down - b.down
}

/** How much a fingering changes the instrument, in semitones. */
function switchedSemitones(valves: readonly Valve[]): (fingering: NamedFingering) => number {
  const isCutOff = valves.length > 1 && valves.every(({ semitones }) => semitones < 0)
  if (isCutOff) return ({ semitones }) => semitones
  const ascending = valves.reduce((bits, valve, i) => (valve.semitones < 0 ? bits | (1 << i) : bits), 0)
  return ({ semitones, down }) => {
    if ((down & ascending) === 0) return Math.abs(semitones)
    return valves.reduce(
      (sum, valve, i) => ((down & (1 << i)) === 0 ? sum : sum + Math.abs(valve.semitones)),
      0,
    )
  }
}

/**
 * The number of valves, with the third alone counted heavier than the first and second together where the two
 * drop alike: 1-2 is taught before 3, and 1-2-4 before 3-4.
 */
function valveBurden(valves: readonly Valve[]): (fingering: NamedFingering) => number {
  const at = (id: string): number => valves.findIndex((valve) => valve.id === id)
  const [first, second, third] = [at('1'), at('2'), at('3')]
  const drop = (index: number): number => valves[index]?.semitones ?? Number.NaN
  const isPair = Math.abs(drop(third) - drop(first) - drop(second)) < 1e-9
  if (!isPair) return (fingering) => fingering.pressed.length
  const [pair, alone] = [(1 << first) | (1 << second), 1 << third]
  return ({ pressed, down }) => pressed.length + ((down & alone) !== 0 && (down & pair) === 0 ? 1.5 : 0)
}

/**
 * One fingering for each nominal drop, the usual one, from the shortest route to the longest: the row of
 * fingerings a player uses.
 */
export function usualFingerings(
  valves: readonly Valve[],
  fingerings: readonly NamedFingering[],
): readonly NamedFingering[] {
  const present = known.get(fingerings)
  if (present?.valves === valves) return present.usual
  const order = usualOrder(valves)
  const best = new Map<number, NamedFingering>()
  for (const fingering of fingerings) {
    const present = best.get(fingering.semitones)
    if (present === undefined || order(fingering, present) < 0) best.set(fingering.semitones, fingering)
  }
  const usual = [...best.values()].sort((a, b) => a.semitones - b.semitones)
  known.set(fingerings, { valves, usual })
  return usual
}

/** Values are never changed, so the same fingerings of the same valves have the same usual ones. */
const known = new WeakMap<
  readonly NamedFingering[],
  { readonly valves: readonly Valve[]; readonly usual: readonly NamedFingering[] }
>()
