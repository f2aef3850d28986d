import { ratioOfCents, ratioOfSemitones } from '../pitch/cents.ts'
import type { LengthProblem, SolverLoop, SolverRow } from './lengthProblem.ts'
import type { LengthRefusal } from './lengthRefusal.ts'
import { type Column, columnBounds } from './modelColumns.ts'
import type { RootedLoop } from './tieLoops.ts'

/** Cents in a factor of e: an error is `naturalCents·ln(target / route)`. */
export const naturalCents = 1200 / Math.LN2

/**
 * A problem reduced to what the solvers move: free loops and the open route as columns, each row's route as
 * `constant + Σ coefficients·columns`. Lengths are counted in `unitMm`, about a cent of the open route, which
 * keeps every figure of both solvers near 1 a cent.
 */
export interface RouteModel {
  readonly unitMm: number
  readonly columns: readonly Column[]
  /** In the problem's order, those of weight 0 included. */
  readonly rows: readonly ModelRow[]
}

/** One row; lengths in the model's unit. */
export interface ModelRow {
  readonly name: string
  readonly weight: number
  readonly offsetCents: number
  readonly constant: number
  readonly columns: readonly number[]
  readonly coefficients: readonly number[]
  /** Length at which the row has no error, its offset taken in. */
  readonly target: number
  /** Tube that its movable slides can add, and take out. */
  readonly tubeOut: number
  readonly tubeIn: number
}

/**
 * Reduces a checked problem. Refuses bounds that contradict each other by way of ties.
 *
 * @example routeModel(problem, rooted).rows[0]?.target
 */
export function routeModel(
  problem: LengthProblem,
  rooted: ReadonlyMap<string, RootedLoop>,
): RouteModel | readonly LengthRefusal[] {
  const unitMm = problem.openLengthMm / naturalCents
  const columns = columnBounds(problem, rooted, unitMm)
  if (!columns.every((column) => 'start' in column)) {
    return columns.filter((column): column is LengthRefusal => 'kind' in column)
  }
  const columnOf = new Map(columns.map((column, at) => [column.rootId, at]))
  const loopById = new Map(problem.loops.map((loop) => [loop.id, loop]))
  const openLoops = problem.loops.filter((loop) => loop.inOpenRoute ?? false)
  const rows = problem.rows.map((row) =>
    modelRow(problem, row, { unitMm, rooted, columnOf, loopById, openLoops }),
  )
  return { unitMm, columns, rows }
}

interface Surroundings {
  readonly unitMm: number
  readonly rooted: ReadonlyMap<string, RootedLoop>
  readonly columnOf: ReadonlyMap<string | null, number>
  readonly loopById: ReadonlyMap<string, SolverLoop>
  readonly openLoops: readonly SolverLoop[]
}

function modelRow(problem: LengthProblem, row: SolverRow, around: Surroundings): ModelRow {
  const { unitMm } = around
  const route = routeOf(problem, row, around)
  const offsetCents = row.offsetCents ?? 0
  const required = (problem.openLengthMm / unitMm) * ratioOfSemitones(row.semitones)
  const target = required * ratioOfCents(offsetCents)
  return {
    name: row.name,
    weight: row.weight ?? 1,
    offsetCents,
    constant: route.constantMm / unitMm,
    columns: [...route.coefficients.keys()],
    coefficients: [...route.coefficients.values()],
    target,
    tubeOut: target * (1 - ratioOfCents(-(row.reach?.sharpCents ?? 0))),
    tubeIn: target * (ratioOfCents(row.reach?.flatCents ?? 0) - 1),
  }
}

/**
 * The route of a row: the open length, and loops that lie in it and not in the open route, less those that lie
 * in the open route and not in it.
 */
function routeOf(problem: LengthProblem, row: SolverRow, around: Surroundings) {
  const coefficients = new Map<number, number>()
  let constantMm = problem.openLengthMm
  const openColumn = around.columnOf.get(null)
  if (openColumn === undefined) constantMm += problem.openChangeMm ?? 0
  else coefficients.set(openColumn, 1)
  const add = (loopId: string, sign: number) => {
    const { root, factor } = around.rooted.get(loopId)!
    const column = around.columnOf.get(root.id)
    if (column === undefined) constantMm += sign * factor * root.lengthMm
    else coefficients.set(column, (coefficients.get(column) ?? 0) + sign * factor)
  }
  for (const id of row.loops) if (!(around.loopById.get(id)?.inOpenRoute ?? false)) add(id, 1)
  for (const loop of around.openLoops) if (!row.loops.includes(loop.id)) add(loop.id, -1)
  for (const [column, coefficient] of coefficients) if (coefficient === 0) coefficients.delete(column)
  return { constantMm, coefficients }
}

/**
 * Length of a row's route at `point` (one value a column), in the model's unit.
 *
 * @example routeAt(model.rows[0]!, point) * model.unitMm
 */
export function routeAt(row: ModelRow, point: ArrayLike<number>): number {
  let route = row.constant
  for (let at = 0; at < row.columns.length; at++) route += row.coefficients[at]! * point[row.columns[at]!]!
  return route
}

/**
 * What is left of a row's error, cents, when its movable slides have done what they can, and the route with
 * the slides so moved, in the model's unit. The error is NaN when the route is not above 0.
 *
 * @example leftAt(row, routeAt(row, point)).cents
 */
export function leftAt(row: ModelRow, route: number): { readonly cents: number; readonly route: number } {
  if (route + row.tubeOut < row.target) return left(row, route + row.tubeOut)
  if (route - row.tubeIn > row.target) return left(row, route - row.tubeIn)
  return { cents: 0, route: row.target }
}

function left(row: ModelRow, route: number) {
  return { cents: route > 0 ? naturalCents * Math.log(row.target / route) : Number.NaN, route }
}
