import { dot, type LeastSquares, leastSquares } from './leastSquares.ts'
import type { ReadingsJob } from './reading.ts'
import { predictedCents, routeMm, slopes, startValues, type Unknown, usedReadings } from './unknowns.ts'

/** Where Gauss's method came to rest. */
export interface SolvedReadings {
  readonly converged: boolean
  readonly values: readonly number[]
  /** The linear problem at the solution. */
  readonly linear: LeastSquares
  /** How much each used reading steers its own fitted value: 0 not at all, 1 alone. */
  readonly leverages: readonly number[]
}

const mostSteps = 60
/** Steps below this, in mm and cents, are rest. */
const restStep = 1e-8

/**
 * Finds the unknowns that leave the least sum of squared residuals, by Gauss's method from the start values. A
 * step that would leave a route without length is halved until it does not.
 *
 * @example solveReadings(job, unknownsOf(job)).converged
 */
export function solveReadings(job: ReadingsJob, unknowns: readonly Unknown[]): SolvedReadings {
  const used = usedReadings(job)
  let values = startValues(job, unknowns)
  let converged = false
  for (let step = 0; step < mostSteps && !converged; step += 1) {
    const { solution } = linearise(job, unknowns, values)
    values = stepWithin(job, unknowns, values, solution)
    converged = solution.every((change) => Math.abs(change) < restStep)
  }
  const linear = linearise(job, unknowns, values)
  const rows = used.map((reading) => slopes(job, unknowns, values, reading))
  const leverages = rows.map((row) =>
    dot(
      row,
      linear.covariance.map((line) => dot(line, row)),
    ),
  )
  return { converged, values, linear, leverages }
}

function linearise(job: ReadingsJob, unknowns: readonly Unknown[], values: readonly number[]): LeastSquares {
  const used = usedReadings(job)
  return leastSquares(
    used.map((reading) => slopes(job, unknowns, values, reading)),
    used.map((reading) => reading.cents - predictedCents(job, unknowns, values, reading)),
  )
}

function stepWithin(
  job: ReadingsJob,
  unknowns: readonly Unknown[],
  values: readonly number[],
  change: readonly number[],
): readonly number[] {
  for (let share = 1; share > 1e-6; share /= 2) {
    const next = values.map((value, i) => value + share * change[i]!)
    if (usedReadings(job).every((reading) => routeMm(job, unknowns, next, reading) > 0)) return next
  }
  return values
}
