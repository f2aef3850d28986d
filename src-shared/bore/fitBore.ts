import { centsBetween } from '../pitch/cents.ts'
import { prepareBody } from './body.ts'
import { freeProblem, targetsProblem, valueAt } from './fitQuestion.ts'
import { leastSquares } from './leastSquares.ts'
import { accepted, type BoreResult, refused } from './refusal.ts'
import { resonancesOf } from './resonances.ts'
import type { BoreConditions, BoreSection, Insert } from './section.ts'

/** A dimension of a section that a fit may change. */
export type BoreDimension =
  | 'lengthMm'
  | 'diameterMm'
  | 'startDiameterMm'
  | 'endDiameterMm'
  | 'flare'
  | 'volumeMm3'

/** A dimension set free, within bounds in its own unit. */
export interface FreeDimension {
  readonly section: number
  readonly dimension: BoreDimension
  readonly lowest: number
  readonly highest: number
}

/** Where a mode should lie. The weight is 1 when absent; 0 leaves the mode out but reports it. */
export interface ModeTarget {
  readonly mode: number
  readonly hz: number
  readonly weight?: number
}

/** A fitted bore. */
export interface FittedBore {
  /** `converged`: no small change is better. `stopped`: the rounds ran out first. */
  readonly status: 'converged' | 'stopped'
  readonly sections: readonly BoreSection[]
  /** The free dimensions' values, in their order. */
  readonly values: readonly number[]
  /** Mode against target, cents, in the targets' order; positive is sharp. */
  readonly errorsCents: readonly number[]
  readonly rmsCents: number
  /** Paths of the dimensions that a bound holds. */
  readonly heldByBounds: readonly string[]
}

/** Finer than for reading, so that the fit's small steps are not lost in the slices. */
const sliceErrorHz = 0.002

/**
 * Fits free dimensions (a tube's length; a bell's flare or a cup's volume) so that chosen modes meet their targets in
 * weighted least squares of cents, with the given loops in. A dimension or mode that is not there is refused.
 *
 * @example fitBore(sections, air, [{ section: 5, dimension: 'lengthMm', lowest: 300, highest: 800 }],
 *   [{ mode: 4, hz: 466.16 }])
 */
export function fitBore(
  sections: readonly BoreSection[],
  conditions: BoreConditions,
  free: readonly FreeDimension[],
  targets: readonly ModeTarget[],
  inserts: readonly Insert[] = [],
): BoreResult<FittedBore> {
  const problem = freeProblem(sections, free) ?? targetsProblem(targets)
  if (problem !== undefined) return problem
  const highestMode = Math.max(...targets.map(({ mode }) => mode))
  const start = modesHz(sections, conditions, highestMode, inserts)
  if (!start.ok) return start
  const missing = targets.findIndex(({ mode }) => start.value[mode - 1] === undefined)
  if (missing >= 0)
    return refused(`targets[${missing}].mode`, targets[missing]!.mode, `a mode up to ${start.value.length}`)
  const errorsOf = (values: readonly number[]) =>
    errorsCents(modesHz(withValues(sections, free, values), conditions, highestMode, inserts), targets)
  const fitted = leastSquares(
    (values) => errorsOf(values)?.map((cents, i) => cents * Math.sqrt(targets[i]!.weight ?? 1)),
    free.map((dimension) => ({ ...dimension, start: valueAt(sections, dimension) ?? 0 })),
  )
  if (fitted === undefined)
    return refused('free', 'bounds without a bore', 'bounds that hold a bore with these modes')
  const errors = errorsOf(fitted.values) ?? []
  return accepted({
    status: fitted.converged ? 'converged' : 'stopped',
    sections: withValues(sections, free, fitted.values),
    values: fitted.values,
    errorsCents: errors,
    rmsCents: weightedRms(errors, targets),
    heldByBounds: fitted.held.map((i) => `sections[${free[i]!.section}].${free[i]!.dimension}`),
  })
}

function modesHz(
  sections: readonly BoreSection[],
  conditions: BoreConditions,
  highestMode: number,
  inserts: readonly Insert[],
): BoreResult<readonly number[]> {
  const body = prepareBody(sections, conditions, { highestMode, sliceErrorHz })
  if (!body.ok) return body
  const found = resonancesOf(body.value, inserts)
  return found.ok ? accepted(found.value.peaks.map(({ hz }) => hz)) : found
}

function errorsCents(
  found: BoreResult<readonly number[]>,
  targets: readonly ModeTarget[],
): readonly number[] | undefined {
  if (!found.ok) return undefined
  const errors = targets.map(({ mode, hz }) => centsBetween(hz, found.value[mode - 1] ?? Number.NaN))
  return errors.every(Number.isFinite) ? errors : undefined
}

function weightedRms(errors: readonly number[], targets: readonly ModeTarget[]): number {
  const weights = targets.map(({ weight }) => weight ?? 1)
  const squares = errors.reduce((sum, cents, i) => sum + weights[i]! * cents * cents, 0)
  return Math.sqrt(squares / weights.reduce((sum, weight) => sum + weight, 0))
}

function withValues(
  sections: readonly BoreSection[],
  free: readonly FreeDimension[],
  values: readonly number[],
): readonly BoreSection[] {
  return free.reduce<readonly BoreSection[]>(
    (changed, { section, dimension }, i) =>
      changed.map((old, at) => (at === section ? ({ ...old, [dimension]: values[i] } as BoreSection) : old)),
    sections,
  )
}
