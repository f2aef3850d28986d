import { type DesignToSolve, designProblem, type LengthsRequest } from './designProblem.ts'
import type { HoldingBound, LengthAnswer, LengthSolution } from './lengthAnswer.ts'
import type { LengthObjective } from './lengthProblem.ts'
import type { LinearProgrammer } from './linearProgrammer.ts'
import { solveLengths } from './solveLengths.ts'

/** The table that `lengths` writes; figures unrounded. */
export interface LengthsRecord {
  readonly status: LengthSolution['status']
  readonly objective: LengthObjective
  /** Of every loop of the design, held ones too. */
  readonly lengthsMm: Readonly<Record<string, number>>
  readonly openChangeMm: number
  /** Of the fingerings that counted. */
  readonly errorsCents: Readonly<Record<string, number>>
  readonly rmsCents: number
  /** The size alone, 0 or more, weights apart; the summary of a design has a sign. */
  readonly largestCents: number
  readonly heldByBounds: readonly HoldingBound[]
}

/** A record, or why there is none. */
export type LengthsRecordAnswer =
  | { readonly kind: 'record'; readonly record: LengthsRecord }
  | { readonly kind: 'none'; readonly answer: Exclude<LengthAnswer, LengthSolution> }

/**
 * Finds a design's lengths and writes them as the record of the `lengths` table.
 *
 * @example lengthsRecord(design, { free: ['L1', 'L2', 'L3'], openFree: true, leaveOut: ['3'], objective: 'largest' }, programmer)
 */
export function lengthsRecord(
  design: DesignToSolve,
  request: LengthsRequest,
  programmer: LinearProgrammer,
): LengthsRecordAnswer {
  const problem = designProblem(design, request)
  if ('refusals' in problem) return { kind: 'none', answer: { status: 'refused', ...problem } }
  const answer = solveLengths(problem, programmer)
  if (answer.status === 'refused' || answer.status === 'programFailed') return { kind: 'none', answer }
  return { kind: 'record', record: recordOf(answer) }
}

function recordOf(solution: LengthSolution): LengthsRecord {
  const counted = solution.rows.filter((row) => row.weight > 0)
  return {
    status: solution.status,
    objective: solution.objective,
    lengthsMm: solution.lengthsMm,
    openChangeMm: solution.openChangeMm,
    errorsCents: Object.fromEntries(counted.map((row) => [row.name, row.errorCents])),
    rmsCents: solution.rmsCents,
    largestCents: solution.largestCents,
    heldByBounds: solution.heldByBounds,
  }
}
