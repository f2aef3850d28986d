import { type Amount, amountsOf, type Piece } from './amounts.ts'
import { Refused } from './reading.ts'
import type { Token } from './tokens.ts'
import { type LengthUnit, lengthUnit } from './units.ts'

/** A typed text made unmistakable: every multiplication written out, every unit by its one symbol. */
export interface Formula {
  readonly text: string
  /** The units in it, as often as they were typed. */
  readonly units: readonly LengthUnit[]
}

/**
 * Writes the formula of a typed text: `1 3/16 in` becomes `(1+3/16)*inch`, `2 ft 9 in` a sum in brackets, `2 pi`
 * and `2(3+4)` products. A unit multiplies what stands before it, so `(62+64)/2 mm` is a length. Refuses what is
 * written in more than one sense: numbers in a row, `19/2 pi`, `2 ft - 9 in` for two feet nine.
 *
 * @throws Refused
 * @example formulaOf(tokensOf('2 ft 9 in')).text // '(2*ft+9*inch)'
 */
export function formulaOf(tokens: readonly Token[]): Formula {
  const pieces = amountsOf(tokens)
  const text = pieces.map((piece, at) => {
    refuseDashedFeet(pieces, at)
    return glue(pieces, at) + pieceFormula(piece)
  })
  return { text: text.join(''), units: pieces.flatMap(unitsOf) }
}

function pieceFormula(piece: Piece): string {
  if (piece.kind !== 'amount') return lengthUnit(piece.text)?.symbol ?? piece.text
  const terms = piece.terms.map(({ number, unit }) => (unit ? `${number}*${unit.symbol}` : number))
  return terms.length === 1 ? terms[0]! : `(${terms.join('+')})`
}

function unitsOf(piece: Piece): readonly LengthUnit[] {
  const units = piece.kind === 'amount' ? piece.terms.map((term) => term.unit) : [unitOf(piece)]
  return units.filter((unit) => unit !== undefined)
}

function unitOf(piece: Piece): LengthUnit | undefined {
  return piece.kind === 'word' ? lengthUnit(piece.text) : undefined
}

/** The multiplication sign that people leave out before a bracket, a name or a unit. */
function glue(pieces: readonly Piece[], at: number): '' | '*' {
  const piece = pieces[at]!
  const before = pieces[at - 1]
  refuseUnitWithoutNumber(piece, before)
  if (!before || !endsValue(before) || !startsValue(piece)) return ''
  const found = `${asTyped(before)} ${asTyped(piece)}`
  if (piece.kind === 'amount') throw new Refused('ambiguous', found, 'a sign or a unit between two numbers')
  const isDivided = pieces[valueStart(pieces, at - 1) - 1]
  if (isDivided?.kind === 'sign' && isDivided.text === '/') {
    throw new Refused('ambiguous', found, 'brackets that show what is divided by what')
  }
  return '*'
}

function refuseUnitWithoutNumber(piece: Piece, before: Piece | undefined): void {
  if (before?.kind === 'amount' && before.terms.at(-1)?.unit && piece.kind === 'sign' && piece.text === '^') {
    throw new Refused('ambiguous', asTyped(before), 'brackets around what is raised to a power')
  }
  if (!unitOf(piece)) return
  const isCounted = before && before.kind !== 'amount' && endsValue(before)
  if (!isCounted) throw new Refused('syntax', asTyped(piece), 'a number before the unit')
}

function refuseDashedFeet(pieces: readonly Piece[], at: number): void {
  const [feet, dash, inches] = pieces.slice(at, at + 3)
  if (dash?.kind !== 'sign' || dash.text !== '-') return
  if (lastUnit(feet) !== 'ft' || lastUnit(inches) !== 'inch') return
  const [ft, inch] = [asTyped(feet!), asTyped(inches!)]
  throw new Refused('ambiguous', `${ft} - ${inch}`, `${ft} ${inch}, or (${ft}) - (${inch})`)
}

function lastUnit(piece: Piece | undefined): string | undefined {
  return piece?.kind === 'amount' ? piece.terms.at(-1)?.unit?.symbol : undefined
}

function endsValue(piece: Piece): boolean {
  return piece.kind === 'amount' || piece.text === ')' || piece.text === 'pi' || unitOf(piece) !== undefined
}

function startsValue(piece: Piece): boolean {
  return piece.kind === 'amount' || piece.kind === 'word' || piece.text === '('
}

/** Where the value that ends at a place begins: a closing bracket goes back to its opening one. */
function valueStart(pieces: readonly Piece[], at: number): number {
  let depth = 0
  for (let start = at; start >= 0; start--) {
    depth += bracketStep(pieces[start]!)
    if (depth === 0) return start
  }
  return 0
}

function bracketStep(piece: Piece): -1 | 0 | 1 {
  if (piece.kind !== 'sign') return 0
  return piece.text === ')' ? 1 : piece.text === '(' ? -1 : 0
}

function asTyped(piece: Piece): string {
  return piece.kind === 'amount' ? (piece as Amount).terms.map((term) => term.found).join(' ') : piece.text
}
