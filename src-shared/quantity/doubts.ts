import {
  asTyped,
  endsValue,
  functionNames,
  isSign,
  lastUnit,
  loneUnit,
  type Piece,
  startsValue,
} from './pieces.ts'
import { Refused } from './reading.ts'

/**
 * Refuses a piece that, where it stands, is written in more than one sense at the bench or in none: numbers in
 * a row, `2 ft - 9 in` for two feet nine, `19/2 pi`, `10/1 1/2`, `mm^2`, a unit without a number.
 *
 * @throws Refused
 * @example refuseDoubts(pieces, 2)
 */
export function refuseDoubts(pieces: readonly Piece[], at: number): void {
  const piece = pieces[at]!
  const before = pieces[at - 1]
  refuseNumbersInRow(piece, before)
  refuseLoneUnit(piece, before)
  refusePowerOfUnit(piece, before)
  refuseFunctionWithoutBracket(piece, pieces[at + 1])
  refuseMixedDivisor(piece, before)
  refuseDashedFeet(pieces, at)
  refuseUnclearDivision(pieces, at)
}

function refuseNumbersInRow(piece: Piece, before: Piece | undefined): void {
  if (piece.kind !== 'amount' || !before || !endsValue(before)) return
  throw new Refused(
    'ambiguous',
    `${asTyped(before)} ${asTyped(piece)}`,
    'a sign or a unit between two numbers',
  )
}

function refuseLoneUnit(piece: Piece, before: Piece | undefined): void {
  if (!loneUnit(piece)) return
  if (!before || !endsValue(before)) throw new Refused('syntax', asTyped(piece), 'a number before the unit')
  if (lastUnit(before)) {
    throw new Refused('syntax', `${asTyped(before)} ${asTyped(piece)}`, 'one unit after a number')
  }
}

function refusePowerOfUnit(piece: Piece, before: Piece | undefined): void {
  if (!isSign(piece, '^') || !before || !lastUnit(before)) return
  throw new Refused('ambiguous', `${asTyped(before)}^`, 'brackets around what is raised to a power')
}

function refuseFunctionWithoutBracket(piece: Piece, after: Piece | undefined): void {
  if (piece.kind !== 'word' || !functionNames.has(piece.text) || isSign(after, '(')) return
  throw new Refused('syntax', piece.text, `brackets, as in ${piece.text}(9)`)
}

function refuseMixedDivisor(piece: Piece, before: Piece | undefined): void {
  if (!isSign(before, '/') || piece.kind !== 'amount' || !piece.terms[0]?.isMixed) return
  throw new Refused('ambiguous', `/ ${asTyped(piece)}`, 'brackets around the mixed fraction')
}

function refuseDashedFeet(pieces: readonly Piece[], at: number): void {
  const [feet, dash, inches] = pieces.slice(at, at + 3)
  if (!isSign(dash, '-') || feet?.kind !== 'amount' || inches?.kind !== 'amount') return
  if (lastUnit(feet)?.symbol !== 'ft' || lastUnit(inches)?.symbol !== 'in') return
  const [ft, inch] = [asTyped(feet), asTyped(inches)]
  throw new Refused('ambiguous', `${ft} - ${inch}`, `${ft} ${inch}, or (${ft}) - (${inch})`)
}

/** After a division sign a product that is not written out, `19/2 pi`, may belong above or below the line. */
function refuseUnclearDivision(pieces: readonly Piece[], at: number): void {
  const [before, piece] = [pieces[at - 1], pieces[at]!]
  if (!before || !endsValue(before) || !startsValue(piece)) return
  if (!isSign(pieces[valueStart(pieces, at - 1) - 1], '/')) return
  throw new Refused(
    'ambiguous',
    `/ ${asTyped(before)} ${asTyped(piece)}`,
    'brackets that show what is divided by what',
  )
}

/** Where the value that ends at a place begins: at its opening bracket, or at the function before that. */
function valueStart(pieces: readonly Piece[], end: number): number {
  let start = end
  let depth = bracketStep(pieces[start])
  while (depth > 0 && start > 0) {
    start -= 1
    depth += bracketStep(pieces[start])
  }
  return pieces[start - 1]?.kind === 'word' && isSign(pieces[start], '(') ? start - 1 : start
}

function bracketStep(piece: Piece | undefined): -1 | 0 | 1 {
  if (isSign(piece, ')')) return 1
  return isSign(piece, '(') ? -1 : 0
}
