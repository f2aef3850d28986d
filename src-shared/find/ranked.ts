import { type Match, matchOfWords, typedWords } from './match.ts'
import { type SearchedText, searchedText } from './wordMatch.ts'

/** Something that can be found, by its name and by further words that are not shown as the name. */
export interface Findable {
  readonly name: string
  readonly alsoCalled?: string
  /** Of two that fit alike, the lower weight comes first; 0 when absent. */
  readonly weight?: number
}

/** A thing that fits what was typed. */
export interface Ranked<Thing extends Findable> {
  readonly thing: Thing
  /** Places of the name to mark; none where the other words fitted. */
  readonly places: readonly number[]
}

/** Things made ready to be looked through with every letter that is typed. */
export type Prepared<Thing extends Findable> = readonly {
  readonly thing: Thing
  readonly name: SearchedText
  /** Name and further words together; `null` when there are none. */
  readonly all: SearchedText | null
}[]

/**
 * Makes things ready to be looked through.
 *
 * @example ranked('a4', prepared([{ name: 'A4' }]), 10).length // 1
 */
export function prepared<Thing extends Findable>(things: readonly Thing[]): Prepared<Thing> {
  return things.map((thing) => ({
    thing,
    name: searchedText(thing.name),
    // Words may be spread over both: “plain third” for the loop “third” of a plain design.
    all: thing.alsoCalled === undefined ? null : searchedText(`${thing.name} ${thing.alsoCalled}`),
  }))
}

/** A fit in the further words costs this much more than one in the name. */
const alsoCalledCost = 5

/**
 * What fits a typed text, best first, at most `most`. What fits alike keeps its order.
 *
 * @example ranked('a4', prepared([{ name: 'Paper A4' }, { name: 'A4' }]), 10)[0]?.thing.name // 'A4'
 */
export function ranked<Thing extends Findable>(
  typed: string,
  things: Prepared<Thing>,
  most: number,
): readonly Ranked<Thing>[] {
  const words = typedWords(typed)
  return things
    .flatMap(({ thing, name, all }) => {
      const match = bestMatch(words, name, all)
      return match === null ? [] : [{ thing, places: match.places, cost: match.cost + (thing.weight ?? 0) }]
    })
    .sort((a, b) => a.cost - b.cost)
    .slice(0, most)
    .map(({ thing, places }) => ({ thing, places }))
}

function bestMatch(words: readonly string[], name: SearchedText, all: SearchedText | null): Match | null {
  const byName = matchOfWords(words, name)
  if (all === null || (byName !== null && byName.cost <= alsoCalledCost)) return byName
  const byAll = matchOfWords(words, all)
  if (byAll === null) return byName
  const places = byAll.places.filter((place) => place < name.folded.length)
  const together = { cost: byAll.cost + alsoCalledCost, places }
  return byName !== null && byName.cost <= together.cost ? byName : together
}
