import type { Fingering } from './fingering.ts'
import type { Valve } from './valve.ts'

/**
 * Nominal drop of valves pressed together, semitones: as the design's list of fingerings gives it, or else the sum of
 * the valves'. The order of the valves does not matter; one that does not exist counts for nothing.
 *
 * @example nominalDrop(valves, [{ pressed: ['1', '3'], semitones: 5 }], ['3', '1']) // 5
 */
export function nominalDrop(
  valves: readonly Valve[],
  fingerings: 'all' | readonly Fingering[],
  pressed: readonly string[],
): number {
  const given = fingerings === 'all' ? undefined : fingerings.find((each) => isSame(each.pressed, pressed))
  if (given?.semitones !== undefined) return given.semitones
  return sumOfDrops(valves.filter(({ id }) => pressed.includes(id)))
}

/**
 * The drops of valves together, semitones, without the error of adding them: 2.2 and 1.1 make the drop that 3.3 is.
 *
 * @example sumOfDrops([{ semitones: 2.2 }, { semitones: 1.1 }]) // 3.3
 */
export function sumOfDrops(valves: readonly Pick<Valve, 'semitones'>[]): number {
  return Number(valves.reduce((sum, { semitones }) => sum + semitones, 0).toPrecision(14))
}

function isSame(one: readonly string[], other: readonly string[]): boolean {
  return one.every((id) => other.includes(id)) && other.every((id) => one.includes(id))
}
