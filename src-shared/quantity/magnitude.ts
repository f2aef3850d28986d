import type {
  ConstantNode,
  FunctionNode,
  MathNode,
  OperatorNode,
  ParenthesisNode,
  SymbolNode,
} from 'mathjs/number'
import { Refused } from './reading.ts'
import { inMillimetres, type LengthUnit } from './units.ts'

/** A number with its dimension: millimetres to the `power`; power 0 is a bare number. */
export interface Magnitude {
  readonly value: number
  readonly power: number
}

/** What a formula is worked out with. */
export interface Terms {
  /** The unit of a bare number that is added to a length; `undefined` when that is not clear. */
  readonly bareUnit: LengthUnit | undefined
  /** The text as typed, for messages. */
  readonly typed: string
}

/**
 * Works out the tree of a formula. Only numbers, brackets, `pi`, `mm`, + − * / ^, `sqrt` and `abs` are
 * allowed in it; anything else is refused. The value may still be infinite or not a number.
 *
 * @throws Refused
 * @example magnitudeOf(parsed('2*mm'), { bareUnit: millimetre, typed: '2 mm' }) // { value: 2, power: 1 }
 */
export function magnitudeOf(node: MathNode, terms: Terms): Magnitude {
  switch (node.type) {
    case 'ConstantNode':
      return constant(node as ConstantNode, terms)
    case 'ParenthesisNode':
      return magnitudeOf((node as ParenthesisNode).content, terms)
    case 'SymbolNode':
      return named((node as SymbolNode).name)
    case 'OperatorNode':
      return operation(node as OperatorNode, terms)
    case 'FunctionNode':
      return functionValue(node as FunctionNode, terms)
    default:
      throw new Refused('syntax', terms.typed, 'a calculation with + − * / ^ and brackets')
  }
}

function constant(node: ConstantNode, terms: Terms): Magnitude {
  if (typeof node.value !== 'number') throw new Refused('syntax', terms.typed, 'a number')
  return { value: node.value, power: 0 }
}

function named(name: string): Magnitude {
  if (name === 'pi') return { value: Math.PI, power: 0 }
  if (name === 'mm') return { value: 1, power: 1 }
  throw new Refused('unknown', name, 'units and pi')
}

function functionValue(node: FunctionNode, terms: Terms): Magnitude {
  const name = node.fn.name
  const [argument, ...more] = node.args
  if (!argument || more.length > 0) throw new Refused('syntax', terms.typed, 'one value in the brackets')
  const { value, power } = magnitudeOf(argument, terms)
  if (name === 'sqrt') return { value: Math.sqrt(value), power: power / 2 }
  if (name === 'abs') return { value: Math.abs(value), power }
  throw new Refused('unknown', name, 'sqrt or abs')
}

function operation(node: OperatorNode, terms: Terms): Magnitude {
  const [first, second] = node.args.map((argument) => magnitudeOf(argument, terms))
  if (!first) throw new Refused('syntax', terms.typed, 'a calculation')
  if (node.fn === 'unaryMinus') return { value: -first.value, power: first.power }
  if (node.fn === 'unaryPlus') return first
  if (!second) throw new Refused('syntax', terms.typed, 'a calculation')
  return twoSided(node.fn, first, second, terms)
}

function twoSided(name: string, a: Magnitude, b: Magnitude, terms: Terms): Magnitude {
  switch (name) {
    case 'add':
      return sum(a, b, terms)
    case 'subtract':
      return sum(a, { value: -b.value, power: b.power }, terms)
    case 'multiply':
      return { value: a.value * b.value, power: a.power + b.power }
    case 'divide':
      return { value: a.value / b.value, power: a.power - b.power }
    case 'pow':
      return raised(a, b, terms)
    default:
      throw new Refused('syntax', terms.typed, 'a calculation with + − * / ^ and brackets')
  }
}

function raised(base: Magnitude, exponent: Magnitude, terms: Terms): Magnitude {
  if (exponent.power !== 0) throw new Refused('dimension', terms.typed, 'an exponent without a unit')
  return { value: base.value ** exponent.value, power: base.power * exponent.value }
}

/** A bare number added to a length is taken in the unit of the field, if that is the only unit typed. */
function sum(a: Magnitude, b: Magnitude, terms: Terms): Magnitude {
  if (a.power === b.power) return { value: a.value + b.value, power: a.power }
  if (a.power + b.power !== 1 || a.power * b.power !== 0) {
    throw new Refused('dimension', terms.typed, 'lengths added to lengths')
  }
  const { bareUnit } = terms
  if (!bareUnit) throw new Refused('ambiguous', terms.typed, 'a unit after every number')
  const inMm = ({ value, power }: Magnitude) => (power === 0 ? inMillimetres(value, bareUnit) : value)
  return { value: inMm(a) + inMm(b), power: 1 }
}
