import { folded } from './fold.ts'
import { matchOfWord, type SearchedText, type WordMatch } from './wordMatch.ts'

/** How well a text fits what was typed. */
export interface Match {
  /** 0 for the best; larger is worse. */
  readonly cost: number
  /** Places of the text that were meant, in order. */
  readonly places: readonly number[]
}

/**
 * The words of what was typed, folded.
 *
 * @example typedWords(' Leg  sp') // ['leg', 'sp']
 */
export function typedWords(typed: string): readonly string[] {
  return folded(typed).split(/\s+/).filter(Boolean)
}

/**
 * Whether a text, made ready before, is what is looked for. Every typed word must be found somewhere in it, in any
 * order: at the start of a word of the text, as the first letters of its words, within a word, with one letter
 * missing, too many, wrong or exchanged, or as letters that follow in order; the costs are in that order. Typed
 * nothing, everything fits alike.
 *
 * @returns `null` when it does not fit
 * @example matchOfWords(typedWords('leg sp'), searchedText('Leg spacing'))?.places // [0, 1, 2, 4, 5]
 */
export function matchOfWords(words: readonly string[], text: SearchedText): Match | null {
  const found: WordMatch[] = []
  for (const word of words) {
    const match = matchOfWord(word, text)
    if (match === null) return null
    found.push(match)
  }
  const places = [...new Set(found.flatMap((match) => match.places))].sort((a, b) => a - b)
  // Of texts that fit alike, the shorter is the likelier to be meant.
  const cost =
    found.reduce((sum, match) => sum + match.cost, 0) + (words.length > 0 ? text.folded.length / 1000 : 0)
  return { cost, places }
}
