import { amountsOf } from './amounts.ts'
import { refuseDoubts } from './doubts.ts'
import { endsValue, loneUnit, type Piece, startsValue } from './pieces.ts'
import type { Token } from './tokens.ts'
import type { LengthUnit } from './units.ts'

/** A typed text made unmistakable: every multiplication written out, every unit in millimetres. */
export interface Formula {
  readonly text: string
  /** The units in it, as often as they were typed. */
  readonly units: readonly LengthUnit[]
}

/**
 * Writes the formula of a typed text: `1 3/16 in` becomes `(1+3/16)*254/10*mm`, `2 ft 9 in` a sum in brackets,
 * `2 pi` and `2(3+4)` products. A unit multiplies all that stands before it in its product, so `(62+64)/2 mm` is
 * a length. Refuses what is written in more than one sense.
 *
 * @throws Refused
 * @example formulaOf(tokensOf('2 ft 9 in')).text // '(2*3048/10*mm+9*254/10*mm)'
 */
export function formulaOf(tokens: readonly Token[]): Formula {
  const pieces = amountsOf(tokens)
  const parts = pieces.map((piece, at) => {
    refuseDoubts(pieces, at)
    return leftOutSign(pieces[at - 1], piece) + pieceFormula(piece)
  })
  return { text: parts.join(''), units: pieces.flatMap(unitsOf) }
}

/** People leave the multiplication sign out before a bracket, a name or a unit. */
function leftOutSign(before: Piece | undefined, piece: Piece): '' | '*' {
  return before && endsValue(before) && startsValue(piece) ? '*' : ''
}

function pieceFormula(piece: Piece): string {
  const unit = loneUnit(piece)
  if (unit) return unitFormula(unit)
  if (piece.kind !== 'amount') return piece.text
  const terms = piece.terms.map(({ number, unit }) => (unit ? `${number}*${unitFormula(unit)}` : number))
  return terms.length === 1 ? terms[0]! : `(${terms.join('+')})`
}

function unitFormula({ numerator, denominator }: LengthUnit): string {
  return `${numerator}/${denominator}*mm`
}

function unitsOf(piece: Piece): readonly LengthUnit[] {
  const units = piece.kind === 'amount' ? piece.terms.map((term) => term.unit) : [loneUnit(piece)]
  return units.filter((unit) => unit !== undefined)
}
