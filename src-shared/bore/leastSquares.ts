/** One unknown of a fit and its bounds. */
export interface Unknown {
  readonly start: number
  readonly lowest: number
  readonly highest: number
}

/** Where a fit ended. `held` lists the unknowns that a bound holds. */
export interface LeastSquares {
  readonly converged: boolean
  readonly values: readonly number[]
  readonly residuals: readonly number[]
  readonly held: readonly number[]
}

type Residuals = (values: readonly number[]) => readonly number[] | undefined

const mostRounds = 60
/** Steps of the difference quotients, and the step that counts as standing still, as shares of the value. */
const differenceShare = 2e-3
const stillShare = 1e-6

/**
 * Values within their bounds that make the sum of squared residuals least, by damped Gauss–Newton steps (Levenberg
 * 1944, Marquardt 1963). `residuals` answers `undefined` where it cannot be reckoned: such a step is not taken.
 * `undefined` when it cannot even be reckoned at the start.
 *
 * @example leastSquares(([x]) => [x! - 3], [{ start: 0, lowest: -9, highest: 9 }])?.values // [3]
 */
export function leastSquares(residuals: Residuals, unknowns: readonly Unknown[]): LeastSquares | undefined {
  let values = unknowns.map(({ start, lowest, highest }) => Math.min(highest, Math.max(lowest, start)))
  let found = residuals(values)
  if (found === undefined) return undefined
  let damping = 1e-3
  let converged = unknowns.length === 0
  for (let round = 0; round < mostRounds && !converged; round++) {
    const slopes = differences(residuals, values, found, unknowns)
    if (slopes === undefined) break
    const free = freeOnes(values, found, slopes, unknowns)
    converged = free.length === 0
    let taken = converged
    while (!taken && damping < 1e9) {
      const trial = step(values, found, slopes, free, damping, unknowns)
      const answer = residuals(trial)
      if (answer !== undefined && squares(answer) <= squares(found)) {
        converged = trial.every((value, i) => Math.abs(value - values[i]!) <= stillShare * scaleOf(value))
        values = trial
        found = answer
        damping = Math.max(1e-9, damping / 10)
        taken = true
      } else {
        damping *= 10
      }
    }
    if (!taken) {
      converged = true
    }
  }
  return { converged, values, residuals: found, held: heldOnes(values, unknowns) }
}

const scaleOf = (value: number) => Math.max(Math.abs(value), 1e-3)
const squares = (list: readonly number[]) => list.reduce((sum, value) => sum + value * value, 0)

function heldOnes(values: readonly number[], unknowns: readonly Unknown[]): number[] {
  return unknowns.flatMap(({ lowest, highest }, i) => {
    const room = stillShare * scaleOf(values[i]!)
    return values[i]! <= lowest + room || values[i]! >= highest - room ? [i] : []
  })
}

/** `slopes[i][r]`: what unknown i does to residual r, by a difference that stays within the bounds. */
function differences(
  residuals: Residuals,
  values: readonly number[],
  found: readonly number[],
  unknowns: readonly Unknown[],
): readonly (readonly number[])[] | undefined {
  const slopes: (readonly number[])[] = []
  for (const [i, value] of values.entries()) {
    const size = differenceShare * scaleOf(value)
    const by = value + size <= unknowns[i]!.highest ? size : -size
    const moved = residuals(values.with(i, value + by))
    if (moved === undefined) return undefined
    slopes.push(moved.map((residual, r) => (residual - found[r]!) / by))
  }
  return slopes
}

const dot = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, value, i) => sum + value * b[i]!, 0)

/** The unknowns that no bound holds against the way downhill. */
function freeOnes(
  values: readonly number[],
  found: readonly number[],
  slopes: readonly (readonly number[])[],
  unknowns: readonly Unknown[],
): readonly number[] {
  const held = new Set(heldOnes(values, unknowns))
  return values.flatMap((value, i) => {
    const downhill = -dot(slopes[i]!, found)
    const outward = value - unknowns[i]!.lowest < unknowns[i]!.highest - value ? downhill <= 0 : downhill >= 0
    return held.has(i) && outward ? [] : [i]
  })
}

function step(
  values: readonly number[],
  found: readonly number[],
  slopes: readonly (readonly number[])[],
  free: readonly number[],
  damping: number,
  unknowns: readonly Unknown[],
): number[] {
  const rows = free.map((i) => [
    ...free.map((j) => dot(slopes[i]!, slopes[j]!) * (i === j ? 1 + damping : 1) + (i === j ? 1e-30 : 0)),
    -dot(slopes[i]!, found),
  ])
  const moves = eliminate(rows)
  const next = [...values]
  for (const [k, i] of free.entries())
    next[i] = Math.min(unknowns[i]!.highest, Math.max(unknowns[i]!.lowest, next[i]! + moves[k]!))
  return next
}

/** Solves a small symmetric positive system, right-hand side in the last column; rows are spent. */
function eliminate(rows: number[][]): number[] {
  const size = rows.length
  for (let i = 0; i < size; i++) {
    for (let j = i + 1; j < size; j++) {
      const share = rows[j]![i]! / rows[i]![i]!
      for (let k = i; k <= size; k++) rows[j]![k]! -= share * rows[i]![k]!
    }
  }
  const solution = new Array<number>(size).fill(0)
  for (let i = size - 1; i >= 0; i--) {
    let rest = rows[i]![size]!
    for (let k = i + 1; k < size; k++) rest -= rows[i]![k]! * solution[k]!
    solution[i] = rest / rows[i]![i]!
  }
  return solution
}
