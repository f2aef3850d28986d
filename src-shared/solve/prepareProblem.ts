import { checkLengthProblem } from './checkLengthProblem.ts'
import type { LengthProblem } from './lengthProblem.ts'
import { type LengthRefusal, refusal } from './lengthRefusal.ts'
import { type RouteModel, routeAt, routeModel } from './routeModel.ts'
import { type RootedLoop, tieLoops } from './tieLoops.ts'

/** A problem that may be solved. */
export interface PreparedProblem {
  readonly problem: LengthProblem
  readonly rooted: ReadonlyMap<string, RootedLoop>
  readonly model: RouteModel
  /** Present lengths, brought within their bounds; one value a column. */
  readonly start: Float64Array
}

/**
 * Checks a problem once, at the door, and reduces it.
 *
 * @example const prepared = prepareProblem(problem); if ('refusals' in prepared) show(prepared.refusals)
 */
export function prepareProblem(
  problem: LengthProblem,
): PreparedProblem | { readonly refusals: readonly LengthRefusal[] } {
  const refusals = checkLengthProblem(problem)
  if (refusals.length > 0) return { refusals }
  const rooted = tieLoops(problem.loops)
  if (!('get' in rooted)) return { refusals: rooted }
  const model = routeModel(problem, rooted)
  if (!('rows' in model)) return { refusals: model }
  const start = Float64Array.from(model.columns, (column) => column.start)
  const vanishing = vanishingRoutes(model, start)
  return vanishing.length > 0 ? { refusals: vanishing } : { problem, rooted, model, start }
}

/**
 * A refusal for each row whose route is not above 0 at a point, which only loops of the open route can bring about.
 *
 * @example vanishingRoutes(model, start) // []
 */
export function vanishingRoutes(model: RouteModel, point: ArrayLike<number>): readonly LengthRefusal[] {
  return model.rows.flatMap((row, at) => {
    const route = routeAt(row, point)
    if (route > 0 && route > row.tubeIn) return []
    return [refusal('routeVanishes', `rows[${at}].loops`, `${route * model.unitMm} mm`, 'a route above 0 mm')]
  })
}
