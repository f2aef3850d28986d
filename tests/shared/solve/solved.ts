import type { LengthSolution } from '#shared/solve/lengthAnswer.ts'
import type { LengthProblem } from '#shared/solve/lengthProblem.ts'
import type { LinearProgrammer } from '#shared/solve/linearProgrammer.ts'
import { solveLengths } from '#shared/solve/solveLengths.ts'

/** The solution of a problem that must have one. */
export function solved(problem: LengthProblem, programmer: LinearProgrammer): LengthSolution {
  const answer = solveLengths(problem, programmer)
  if ('rows' in answer) return answer
  throw new Error(JSON.stringify(answer))
}
