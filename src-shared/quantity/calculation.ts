import { formulaOf } from './formula.ts'
import { type Magnitude, magnitudeOf } from './magnitude.ts'
import { parsed } from './parser.ts'
import { Refused } from './reading.ts'
import { type Token, tokensOf } from './tokens.ts'
import { type LengthUnit, lengthUnit } from './units.ts'

/** What a field takes. */
export interface Field {
  /** What is typed there, with examples: `a length such as 12.5 mm`. */
  readonly wanted: string
  /** The words that may be used, for people. */
  readonly words: string
  readonly takesUnits: boolean
  /** What a bare number is worth that is added to a length in these units, mm each; `undefined`: not clear. */
  readonly bareMm: (units: readonly LengthUnit[]) => number | undefined
}

/** A typed calculation worked out, with the units that stood in it. */
export interface Calculation extends Magnitude {
  readonly units: readonly LengthUnit[]
}

/**
 * Works out what was typed. Lengths come in millimetres; the value may be infinite or not a number.
 *
 * @throws Refused
 * @example calculationOf('2*62.5', field) // { value: 125, power: 0, units: [] }
 */
export function calculationOf(text: string, field: Field): Calculation {
  const typed = text.trim()
  if (typed === '') throw new Refused('empty', '', field.wanted)
  const tokens = tokensOf(typed)
  for (const token of tokens) refuseForeignWord(token, field)
  const formula = formulaOf(tokens)
  const bareMm = field.bareMm(formula.units)
  const magnitude = magnitudeOf(treeOf(formula.text, typed, field), { bareMm, typed })
  return { ...magnitude, units: formula.units }
}

const namesOfEveryField = new Set(['pi', 'sqrt', 'abs'])

function refuseForeignWord({ kind, text }: Token, { takesUnits, words }: Field): void {
  if (kind !== 'word' || namesOfEveryField.has(text) || (takesUnits && lengthUnit(text))) return
  throw new Refused('unknown', text, words)
}

function treeOf(formula: string, typed: string, { wanted }: Field): ReturnType<typeof parsed> {
  try {
    return parsed(formula)
  } catch {
    throw new Refused('syntax', typed, wanted)
  }
}
