/**
 * The interval from `reference` up to `value`, in cents. Both in the same unit (hertz, say), both above 0.
 *
 * @example centsBetween(440, 880) // 1200
 */
export function centsBetween(reference: number, value: number): number {
  return 1200 * Math.log2(value / reference)
}

/**
 * The frequency ratio of an interval in cents.
 *
 * @example ratioOfCents(1200) // 2
 */
export function ratioOfCents(cents: number): number {
  return 2 ** (cents / 1200)
}

/**
 * The frequency ratio of a number of tempered semitones.
 *
 * @example ratioOfSemitones(12) // 2
 */
export function ratioOfSemitones(semitones: number): number {
  return 2 ** (semitones / 12)
}
