/** Chance that can be had again: the same numbers give the same draws on every machine. */
export interface Chance {
  /** From 0 up to, not including, 1. */
  share(): number
  /** A whole number from 0 up to, not including, `below`. */
  below(below: number): number
  /** One item of a list that is not empty. */
  of<T>(items: readonly T[]): T
}

/**
 * Chance from a seed and the number of a trial, so that any one trial can be made again alone. The generator is
 * a 32-bit xorshift with its state stirred by multiplication first.
 */
export function chanceOf(seed: number, trial: number): Chance {
  let state = (Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) ^ Math.imul(trial + 1, 0xc2b2ae35)) | 1
  const next = (): number => {
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    return Math.imul(state, 0x2545f491) >>> 0
  }
  for (let i = 0; i < 4; i++) next()
  const share = (): number => next() / 2 ** 32
  const below = (limit: number): number => Math.floor(share() * limit)
  return { share, below, of: (items) => items[below(items.length)]! }
}
