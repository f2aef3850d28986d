import { type BoreRefusal, refused } from './refusal.ts'

/** Longest tube that a bore may have, mm. */
export const longestMm = 1e6
const widestMm = 1e4

/** What is wrong, or `undefined`. */
export type Problem = BoreRefusal | undefined

/**
 * A refusal when a number is not within its range, both ends included.
 *
 * @example within('flare', 30, 0.05, 20, 'a flare from 0.05 to 20')?.found // '30'
 */
export function within(path: string, value: number, low: number, high: number, what: string): Problem {
  const good = Number.isFinite(value) && value >= low && value <= high
  return good ? undefined : refused(path, value, what).refusal
}

/** A refusal when a number is no length of tube, mm. */
export const lengthProblem = (path: string, value: number) =>
  within(path, value, 0, longestMm, 'a length from 0 to 1000000 mm')

/** A refusal when a number is no diameter of tube, mm. */
export const diameterProblem = (path: string, value: number) =>
  within(path, value, 0.1, widestMm, 'a diameter from 0.1 to 10000 mm')

/** The first problem of a list; later ones are not asked for. */
export function firstOf(...asked: readonly (() => Problem)[]): Problem {
  for (const ask of asked) {
    const problem = ask()
    if (problem !== undefined) return problem
  }
  return undefined
}
