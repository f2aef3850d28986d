import type { Token } from './tokens.ts'
import { type LengthUnit, lengthUnit } from './units.ts'

/** A number or mixed fraction with the unit typed after it (`12`, `1 3/16 in`), or several (`2 ft 9 in`). */
export interface Amount {
  readonly kind: 'amount'
  /** One term, or the terms of a compound from the largest unit down. */
  readonly terms: readonly Term[]
}

interface Term {
  /** The number as a formula: `12`, `(1+3/16)`. */
  readonly number: string
  readonly unit: LengthUnit | undefined
  /** Whether it is a mixed fraction, `1 3/16`. */
  readonly isMixed: boolean
  /** As typed, for messages. */
  readonly found: string
}

/** What a formula is made of: amounts, and the tokens between them. */
export type Piece = Amount | Token

/** The functions that may be typed. */
export const functionNames: ReadonlySet<string> = new Set(['sqrt', 'abs'])

/**
 * Whether a piece is the sign given.
 *
 * @example isSign({ kind: 'sign', text: '/', spaced: false }, '/') // true
 */
export function isSign(piece: Piece | undefined, sign: string): boolean {
  return piece?.kind === 'sign' && piece.text === sign
}

/**
 * The unit that a piece is, when it stands apart from a number: after a bracket, after pi.
 *
 * @example loneUnit({ kind: 'word', text: 'mm', spaced: true }) // millimetre
 */
export function loneUnit(piece: Piece): LengthUnit | undefined {
  return piece.kind === 'word' ? lengthUnit(piece.text) : undefined
}

/**
 * The unit that a piece ends in: an amount's last one, or itself when it is a unit.
 *
 * @example lastUnit({ kind: 'amount', terms: [] }) // undefined
 */
export function lastUnit(piece: Piece | undefined): LengthUnit | undefined {
  if (piece?.kind === 'amount') return piece.terms.at(-1)?.unit
  return piece && loneUnit(piece)
}

/**
 * Whether a value ends with this piece, so that one that begins after it multiplies.
 *
 * @example endsValue({ kind: 'sign', text: ')', spaced: false }) // true
 */
export function endsValue(piece: Piece): boolean {
  return piece.kind === 'amount' || isSign(piece, ')') || isPi(piece) || loneUnit(piece) !== undefined
}

/**
 * Whether a value begins with this piece.
 *
 * @example startsValue({ kind: 'sign', text: '(', spaced: false }) // true
 */
export function startsValue(piece: Piece): boolean {
  return piece.kind !== 'sign' || piece.text === '('
}

/**
 * A piece as it was typed, for messages.
 *
 * @example asTyped({ kind: 'word', text: 'pi', spaced: true }) // 'pi'
 */
export function asTyped(piece: Piece): string {
  return piece.kind === 'amount' ? piece.terms.map((term) => term.found).join(' ') : piece.text
}

function isPi(piece: Piece): boolean {
  return piece.kind === 'word' && piece.text === 'pi'
}
