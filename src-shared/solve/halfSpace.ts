/** `sign·Σ coefficients·x[columns] ≥ least`. */
export interface HalfSpace {
  readonly columns: readonly number[]
  readonly coefficients: readonly number[]
  readonly sign: 1 | -1
  readonly least: number
}

/**
 * How far inside a half-space a point lies; negative outside.
 *
 * @example slackOf({ columns: [0], coefficients: [1], sign: 1, least: 2 }, [5]) // 3
 */
export function slackOf(halfSpace: HalfSpace, point: ArrayLike<number>): number {
  let sum = 0
  for (let at = 0; at < halfSpace.columns.length; at++) {
    sum += halfSpace.coefficients[at]! * point[halfSpace.columns[at]!]!
  }
  return halfSpace.sign * sum - halfSpace.least
}
