import type { Amount, Piece } from './pieces.ts'
import { Refused } from './reading.ts'
import type { Token } from './tokens.ts'
import { inMillimetres, lengthUnit } from './units.ts'

/**
 * Joins the tokens of each number, mixed fraction and unit into an amount, and amounts that follow each other
 * from a larger unit to a smaller one of its family into a compound. Refuses `9-1/2` written without spaces,
 * which the bench writes for nine and a half.
 *
 * @throws Refused
 * @example amountsOf(tokensOf('2 ft 9 1/2 in')) // one amount of two terms: 2 ft and (9+1/2) inch
 */
export function amountsOf(tokens: readonly Token[]): readonly Piece[] {
  const pieces: Piece[] = []
  for (let at = 0; at < tokens.length; ) {
    const { piece, length } = pieceAt(tokens, at)
    const compound = compoundOf(pieces.at(-1), piece)
    if (compound) pieces.pop()
    pieces.push(compound ?? piece)
    at += length
  }
  return pieces
}

function pieceAt(tokens: readonly Token[], at: number): { piece: Piece; length: number } {
  const token = tokens[at]!
  if (token.kind !== 'number') return { piece: token, length: 1 }
  refuseDashedFraction(tokens, at)
  const [number, numberLength] = numberAt(tokens, at)
  const word = tokens[at + numberLength]
  const unit = word?.kind === 'word' ? lengthUnit(word.text) : undefined
  const length = unit ? numberLength + 1 : numberLength
  const found = textOf(tokens.slice(at, at + length))
  return { piece: { kind: 'amount', terms: [{ number, unit, isMixed: numberLength > 1, found }] }, length }
}

/** The number at a place as a formula, and how many tokens it takes. */
function numberAt(tokens: readonly Token[], at: number): readonly [string, number] {
  const [whole, numerator, , denominator] = tokens.slice(at, at + 4).map((token) => token.text)
  const isMixed = isWhole(tokens[at]) && isFraction(tokens, at + 1)
  return isMixed ? [`(${whole}+${numerator}/${denominator})`, 4] : [whole!, 1]
}

function compoundOf(before: Piece | undefined, piece: Piece): Amount | undefined {
  if (before?.kind !== 'amount' || piece.kind !== 'amount') return undefined
  const larger = before.terms.at(-1)?.unit
  const smaller = piece.terms[0]?.unit
  if (!larger || smaller?.family !== larger.family) return undefined
  if (inMillimetres(1, smaller) >= inMillimetres(1, larger)) return undefined
  return { kind: 'amount', terms: [...before.terms, ...piece.terms] }
}

function refuseDashedFraction(tokens: readonly Token[], at: number): void {
  const [whole, dash, numerator] = tokens.slice(at, at + 3)
  const dashed = isWhole(whole) && dash?.text === '-' && isFraction(tokens, at + 2)
  const isDenominator = tokens[at - 1]?.text === '/'
  if (!dashed || isDenominator || dash?.spaced || numerator?.spaced) return
  const [a, , b, , c] = tokens.slice(at, at + 5).map((token) => token.text)
  throw new Refused('ambiguous', `${a}-${b}/${c}`, `${a} ${b}/${c}, or ${a} - ${b}/${c} with spaces`)
}

function isFraction(tokens: readonly Token[], at: number): boolean {
  return isWhole(tokens[at]) && tokens[at + 1]?.text === '/' && isWhole(tokens[at + 2])
}

function isWhole(token: Token | undefined): boolean {
  return token?.kind === 'number' && /^\d+$/.test(token.text)
}

function textOf(tokens: readonly Token[]): string {
  return tokens
    .map((token) => (token.spaced ? ` ${token.text}` : token.text))
    .join('')
    .trim()
}
