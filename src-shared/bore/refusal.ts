/** Why a bore, an insert or a pasted profile cannot be reckoned. */
export interface BoreRefusal {
  /** The value at fault, `sections[3].lengthMm` say. */
  readonly path: string
  /** What stands there, as text. */
  readonly found: string
  /** What would be accepted, as text. */
  readonly expected: string
}

/** A value, or the reason why there is none. */
export type BoreResult<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly refusal: BoreRefusal }

/**
 * A result that holds a value.
 *
 * @example accepted(3) // { ok: true, value: 3 }
 */
export function accepted<Value>(value: Value): BoreResult<Value> {
  return { ok: true, value }
}

/**
 * A result that holds a reason.
 *
 * @example refused('sections[0].lengthMm', -1, 'a length of 0 or more')
 */
export function refused(
  path: string,
  found: unknown,
  expected: string,
): { readonly ok: false; readonly refusal: BoreRefusal } {
  return { ok: false, refusal: { path, found: describeFound(found), expected } }
}

const longestFound = 60

function describeFound(found: unknown): string {
  if (typeof found === 'string')
    return found.length > longestFound ? `${found.slice(0, longestFound)}…` : found
  if (typeof found === 'number' || found === null || found === undefined) return String(found)
  return JSON.stringify(found) ?? typeof found
}
