/** Scales of a drawing office and a bench, the largest first: size on paper over true size. */
const scales = [
  10,
  5,
  2,
  1,
  1 / 2,
  1 / 2.5,
  1 / 3,
  1 / 4,
  1 / 5,
  1 / 8,
  1 / 10,
  1 / 15,
  1 / 20,
  1 / 25,
  1 / 50,
]

/**
 * The largest customary scale that is no more than what there is room for; the room itself where even the smallest is
 * too large.
 *
 * @example standardScale(1 / 4.72) // 0.2, that is 1 : 5
 */
export function standardScale(most: number): number {
  return scales.find((scale) => scale <= most * (1 + 1e-9)) ?? most
}
