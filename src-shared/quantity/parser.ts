import { create, type MathNode, parseDependencies } from 'mathjs/number'

let parse: ((text: string) => MathNode) | undefined

function readyParser(): (text: string) => MathNode {
  // The type says the list may be missing, as some other lists are in the number-only build.
  if (!parseDependencies) throw new Error('the parser is not part of this build')
  return create(parseDependencies).parse
}

/**
 * The tree of a formula. Only the parser of mathjs is used, never its evaluation, so no typed text can reach a
 * function of it. It is made ready at the first call.
 *
 * @throws SyntaxError, or RangeError for brackets nested too deeply
 * @example parsed('1+2*3') // an operator node
 */
export function parsed(formula: string): MathNode {
  parse ??= readyParser()
  return parse(formula)
}
