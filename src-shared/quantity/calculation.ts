import { formulaOf } from './formula.ts'
import { type Magnitude, magnitudeOf } from './magnitude.ts'
import { parsed } from './parser.ts'
import { functionNames } from './pieces.ts'
import { Refused } from './reading.ts'
import { type Token, tokensOf } from './tokens.ts'
import { type LengthUnit, lengthUnit } from './units.ts'

/** What a field takes. */
export interface Field {
  /** What is typed there, with examples: `a length such as 12.5 mm`. */
  readonly wanted: string
  /** The words that may be used, for people. */
  readonly words: string
  /** The unit of bare numbers in a field of lengths. */
  readonly bareUnit?: LengthUnit
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
  const hasNumber = tokens.some(({ kind }) => kind === 'number')
  const foreign = tokens.find((token) => isForeign(token, field))
  // A word beside a number is taken for a unit; a word alone is no calculation at all.
  if (foreign && hasNumber) throw new Refused('unknown', foreign.text, field.words)
  if (foreign) throw new Refused('syntax', typed, field.wanted)
  const formula = formulaOf(tokens)
  // With another unit in the text, a number without one could be meant in either.
  const isClear = formula.units.every((unit) => unit === field.bareUnit)
  const bareUnit = isClear ? field.bareUnit : undefined
  const magnitude = magnitudeOf(treeOf(formula.text, typed, field), { bareUnit, typed })
  return { ...magnitude, units: formula.units }
}

/** Whether a piece is a word that is neither a unit of the field nor pi nor a function. */
function isForeign({ kind, text }: Token, { bareUnit }: Field): boolean {
  if (kind !== 'word' || text === 'pi' || functionNames.has(text)) return false
  return bareUnit === undefined || lengthUnit(text) === undefined
}

function treeOf(formula: string, typed: string, { wanted }: Field): ReturnType<typeof parsed> {
  try {
    return parsed(formula)
  } catch {
    throw new Refused('syntax', typed, wanted)
  }
}
