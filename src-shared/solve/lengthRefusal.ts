/** Why a problem was not solved; a closed set. */
export type RefusalKind =
  | 'notANumber'
  | 'outOfRange'
  | 'repeatedName'
  | 'unknownLoop'
  | 'unknownFingering'
  | 'tiedInCircle'
  | 'boundsContradict'
  | 'allWeightsZero'
  | 'nothingFree'
  | 'routeVanishes'
  | 'notSounded'

/** One thing wrong with what was asked: where it stands, what stood there, what may stand there. */
export interface LengthRefusal {
  readonly kind: RefusalKind
  /** Path within the problem, like `loops[2].freedom.lowestMm`. */
  readonly path: string
  readonly found: string
  readonly expected: string
}

/**
 * Makes a refusal; a number that cannot be written in JSON is told in words.
 *
 * @example refusal('notANumber', 'openLengthMm', Number.NaN, 'a length above 0')
 */
export function refusal(
  kind: RefusalKind,
  path: string,
  found: string | number,
  expected: string,
): LengthRefusal {
  return { kind, path, found: String(found), expected }
}
