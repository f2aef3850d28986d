import type { SolvedReadings } from './solveReadings.ts'
import { type Unknown, unknownName } from './unknowns.ts'

/** A share of an unknown that counts as left open; rounding leaves far less. */
const leftOpen = 1e-6

/** Whether the readings settle the unknown at an index. */
export function isSettled({ linear }: SolvedReadings, at: number): boolean {
  return linear.undetermined[at]![at]! < leftOpen
}

/**
 * Unknowns that the readings leave open, in groups that cannot be told apart, by name.
 *
 * @example notToldApart(unknowns, solved) // [['loop L3', 'harmonic 6']]
 */
export function notToldApart(
  unknowns: readonly Unknown[],
  solved: SolvedReadings,
): readonly (readonly string[])[] {
  const left = new Set([...unknowns.keys()].filter((at) => !isSettled(solved, at)))
  const groups: string[][] = []
  for (const first of left) {
    const group = connected(solved, left, first)
    groups.push(group.map((at) => unknownName(unknowns[at]!)))
  }
  return groups
}

/** Takes out of `left` all that hangs together with `first`, and gives it in order. */
function connected({ linear }: SolvedReadings, left: Set<number>, first: number): readonly number[] {
  const group = [first]
  left.delete(first)
  for (const at of group)
    for (const other of [...left])
      if (Math.abs(linear.undetermined[at]![other]!) > leftOpen) {
        group.push(other)
        left.delete(other)
      }
  return group.sort((a, b) => a - b)
}
