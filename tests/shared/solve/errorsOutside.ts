import type { LengthProblem } from '#shared/solve/lengthProblem.ts'

/** Objective of given lengths, worked out from the definition alone: what the solver is checked against. */
export function objectiveOutside(
  problem: LengthProblem,
  lengthsMm: Readonly<Record<string, number>>,
  openChangeMm: number,
): number {
  let squares = 0
  let weights = 0
  let largest = 0
  for (const row of problem.rows) {
    const weight = row.weight ?? 1
    let route = problem.openLengthMm + openChangeMm
    for (const loop of problem.loops) {
      const inRoute = row.loops.includes(loop.id) ? 1 : 0
      route += (inRoute - (loop.inOpenRoute ? 1 : 0)) * lengthsMm[loop.id]!
    }
    const required = problem.openLengthMm * 2 ** (row.semitones / 12)
    const error = 1200 * Math.log2(required / route) + (row.offsetCents ?? 0)
    squares += weight * error * error
    weights += weight
    largest = Math.max(largest, weight * Math.abs(error))
  }
  return problem.objective === 'rms' ? Math.sqrt(squares / weights) : largest
}
