import { folded } from './fold.ts'

/** One typed word found in a text. */
export interface WordMatch {
  readonly cost: number
  readonly places: readonly number[]
}

/** A text made ready to be looked through. */
export interface SearchedText {
  /** As `folded` makes it. */
  readonly folded: string
  /** Where its words begin. */
  readonly starts: readonly number[]
  /** The first letters of its words. */
  readonly initials: string
}

/**
 * A text made ready to be looked through; worth doing once for a text that is looked through often.
 *
 * @example searchedText('Size a slide').initials // 'sas'
 */
export function searchedText(text: string): SearchedText {
  const whole = folded(text)
  const starts = wordStarts(whole)
  return { folded: whole, starts, initials: starts.map((start) => whole[start]).join('') }
}

/** What each way of fitting costs; a later place in the text adds a little. */
const costs = { wholeWord: 0, wordStart: 1, firstLetters: 3, within: 4, slip: 6, inOrder: 9 } as const

/** Shorter words are not guessed at: too much would fit them. */
const shortestSlip = 4
const shortestInOrder = 3

/**
 * The cheapest way in which a typed word, folded, lies in a text; `null` for none.
 *
 * @example matchOfWord('slid', searchedText('Size a slide')) // { cost: 1.07, places: [7, 8, 9, 10] }
 */
export function matchOfWord(word: string, text: SearchedText): WordMatch | null {
  const { folded: whole, starts } = text
  return (
    atWordStart(word, whole, starts) ??
    byFirstLetters(word, text) ??
    within(word, whole) ??
    withSlip(word, whole, starts) ??
    inOrder(word, whole)
  )
}

/** Where words begin: a letter or figure after something that is none. */
function wordStarts(text: string): readonly number[] {
  return [...text.matchAll(/(?<![\p{L}\p{N}])[\p{L}\p{N}]/gu)].map(({ index }) => index)
}

function run(from: number, length: number, cost: number): WordMatch {
  return { cost: cost + from / 100, places: Array.from({ length }, (_, i) => from + i) }
}

function atWordStart(word: string, text: string, starts: readonly number[]): WordMatch | null {
  const fitting = starts.filter((start) => text.startsWith(word, start))
  const whole = fitting.find((start) => !/^[\p{L}\p{N}]/u.test(text.slice(start + word.length)))
  if (whole !== undefined) return run(whole, word.length, costs.wholeWord)
  return fitting[0] === undefined ? null : run(fitting[0], word.length, costs.wordStart)
}

/** `sas` for “size a slide”. */
function byFirstLetters(word: string, { starts, initials }: SearchedText): WordMatch | null {
  if (word.length < 2) return null
  const from = initials.indexOf(word)
  if (from < 0) return null
  return { cost: costs.firstLetters + from / 100, places: starts.slice(from, from + word.length) }
}

function within(word: string, text: string): WordMatch | null {
  const from = text.indexOf(word)
  return from < 0 ? null : run(from, word.length, costs.within)
}

function withSlip(word: string, text: string, starts: readonly number[]): WordMatch | null {
  if (word.length < shortestSlip) return null
  for (const start of starts) {
    // A slip in the very first letter is rare, and looking for it would cost the most.
    if (text[start] !== word[0] && text[start] !== word[1]) continue
    for (const length of [word.length, word.length - 1, word.length + 1]) {
      const part = text.slice(start, start + length)
      if (part.length === length && isOneSlipAway(word, part)) return run(start, length, costs.slip)
    }
  }
  return null
}

/** Whether one letter missing, too many, wrong, or two exchanged make one of the other. */
function isOneSlipAway(a: string, b: string): boolean {
  let same = 0
  while (same < a.length && a[same] === b[same]) same++
  const restOf = (text: string, skipped: number): string => text.slice(same + skipped)
  if (a.length !== b.length)
    return a.length > b.length ? restOf(a, 1) === restOf(b, 0) : restOf(a, 0) === restOf(b, 1)
  const exchanged = a[same] === b[same + 1] && a[same + 1] === b[same] && restOf(a, 2) === restOf(b, 2)
  return restOf(a, 1) === restOf(b, 1) || exchanged
}

/** Every letter in its order, with others between; the farther apart, the worse. */
function inOrder(word: string, text: string): WordMatch | null {
  if (word.length < shortestInOrder) return null
  const places: number[] = []
  for (const letter of word) {
    const at = text.indexOf(letter, (places.at(-1) ?? -1) + 1)
    if (at < 0) return null
    places.push(at)
  }
  const spread = places.at(-1)! - places[0]! + 1 - word.length
  return spread > 2 * word.length ? null : { cost: costs.inOrder + spread / 10, places }
}
