/**
 * Why a typed text was not taken:
 * `empty` nothing typed; `syntax` not a calculation; `ambiguous` two meanings; `unknown` a word or sign that is
 * not used here; `dimension` a calculation that does not end in a length; `range` no finite number, or one
 * outside the bounds asked for.
 */
export type RefusalCode = 'empty' | 'syntax' | 'ambiguous' | 'unknown' | 'dimension' | 'range'

/** A typed text that was not taken: what was found, what was expected, and a sentence that says both. */
export interface Refusal {
  readonly ok: false
  readonly code: RefusalCode
  readonly found: string
  readonly expected: string
  readonly message: string
}

/** Bounds for a typed value, both included; in millimetres for a length, else in the unit of the field. */
export interface Bounds {
  readonly atLeast?: number
  readonly atMost?: number
}

/** Carries a refusal out of the steps of a reading; never leaves this folder. */
export class Refused extends Error {
  readonly refusal: Refusal

  constructor(code: RefusalCode, found: string, expected: string) {
    super(code)
    this.refusal = { ok: false, code, found, expected, message: sentence[code](shown(found), expected) }
  }
}

/**
 * The outcome of `read`, or the refusal it ended in. Anything else it throws is a mistake in the program and
 * goes on.
 *
 * @example readingOf(() => { throw new Refused('empty', '', 'a length') }) // { ok: false, code: 'empty', … }
 */
export function readingOf<Outcome>(read: () => Outcome): Outcome | Refusal {
  try {
    return read()
  } catch (thrown) {
    if (thrown instanceof Refused) return thrown.refusal
    throw thrown
  }
}

/**
 * `value` when it is finite and within the bounds; else a refusal with code `range`, which says the bound in `unit`,
 * one of which is `perUnit` of the value.
 *
 * @example withinBounds(3, { atLeast: 0 }, 'mm', '3') // 3
 */
export function withinBounds(
  value: number,
  bounds: Bounds,
  unit: string,
  found: string,
  perUnit = 1,
): number {
  const { atLeast = Number.NEGATIVE_INFINITY, atMost = Number.POSITIVE_INFINITY } = bounds
  if (!Number.isFinite(value)) throw new Refused('range', found, 'a finite number')
  if (value < atLeast)
    throw new Refused('range', found, `at least ${boundText(atLeast / perUnit, Math.ceil)} ${unit}`.trim())
  if (value > atMost)
    throw new Refused('range', found, `at most ${boundText(atMost / perUnit, Math.floor)} ${unit}`.trim())
  // A negative zero would be written with a minus sign.
  return value + 0
}

/** A bound as people write it, brought inwards to a hundredth where it is no round number. */
function boundText(bound: number, inwards: (value: number) => number): string {
  return String(String(bound).length <= 8 ? bound : inwards(bound * 100) / 100)
}

const longestShown = 40

function shown(found: string): string {
  return found.length > longestShown ? `${found.slice(0, longestShown)}…` : found
}

const sentence: Readonly<Record<RefusalCode, (found: string, expected: string) => string>> = {
  empty: (_, expected) => `Type ${expected}.`,
  syntax: (found, expected) => `“${found}” is not complete or not clear. Type ${expected}.`,
  ambiguous: (found, expected) => `“${found}” can mean two things. Type ${expected}.`,
  unknown: (found, expected) => `“${found}” is not used here. Use ${expected}.`,
  dimension: (found, expected) => `“${found}” does not make a length. Type ${expected}.`,
  range: (found, expected) => `“${found}” is out of range. Expected ${expected}.`,
}
