import { type Match, matchOf } from './match.ts'

/** Something that can be found, by its name and by further words that are not shown as the name. */
export interface Findable {
  readonly name: string
  readonly alsoCalled?: string
  /** Of two that fit alike, the lower weight comes first; 0 when absent. */
  readonly weight?: number
}

export interface Ranked<Thing extends Findable> {
  readonly thing: Thing
  /** Places of the name to mark; none where the other words fitted. */
  readonly places: readonly number[]
}

/** A fit in the further words costs this much more than one in the name. */
const alsoCalledCost = 5

/**
 * What fits a typed text, best first, at most `most`. What fits alike keeps its order.
 *
 * @example ranked('a4', [{ name: 'A4' }, { name: 'Paper A4' }], 10)[0]?.thing.name // 'A4'
 */
export function ranked<Thing extends Findable>(
  typed: string,
  things: readonly Thing[],
  most: number,
): readonly Ranked<Thing>[] {
  return things
    .flatMap((thing) => {
      const match = bestMatch(typed, thing)
      return match === null ? [] : [{ thing, places: match.places, cost: match.cost + (thing.weight ?? 0) }]
    })
    .sort((a, b) => a.cost - b.cost)
    .slice(0, most)
    .map(({ thing, places }) => ({ thing, places }))
}

function bestMatch(typed: string, { name, alsoCalled }: Findable): Match | null {
  const byName = matchOf(typed, name)
  if (alsoCalled === undefined) return byName
  // Words may be spread over both: “plain third” for the loop “third” of a plain design.
  const byBoth = matchOf(typed, `${name} ${alsoCalled}`)
  if (byBoth === null) return byName
  const places = byBoth.places.filter((place) => place < name.length)
  const together = { cost: byBoth.cost + alsoCalledCost, places }
  return byName !== null && byName.cost <= together.cost ? byName : together
}
