/** No sample goes beyond this part of full scale: −12 dB, so that a mistake elsewhere cannot hurt an ear. */
export const levelLimit = 0.25

/** Where the level control stands before anyone moves it, 0 to 1: −28 dB of full scale. */
export const startingLevel = 0.4

/**
 * The gain of a level control, part of full scale: the square of its place, up to the limit, so that its lower
 * half is soft. A level outside 0 to 1 counts as the end it lies beyond, one that is no number as silence.
 *
 * @example gainOfLevel(1) // 0.25
 */
export function gainOfLevel(level: number): number {
  const held = Math.min(1, Math.max(0, level))
  return Number.isNaN(held) ? 0 : levelLimit * held ** 2
}

/**
 * A level that was kept somewhere: a number from 0 to 1, or the one to start with.
 *
 * @example keptLevel('loud') // 0.4
 */
export function keptLevel(kept: unknown): number {
  return typeof kept === 'number' && kept >= 0 && kept <= 1 ? kept : startingLevel
}
