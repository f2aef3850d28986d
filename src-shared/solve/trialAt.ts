import type { PreparedProblem } from './prepareProblem.ts'
import type { TrialLengths } from './sounding.ts'

/**
 * The lengths that a point of the model stands for.
 *
 * @example trialAt(prepared, prepared.start).lengthsMm.L1
 */
export function trialAt({ problem, rooted, model }: PreparedProblem, point: ArrayLike<number>): TrialLengths {
  const mmOfRoot = new Map(model.columns.map(({ rootId }, at) => [rootId, point[at]! * model.unitMm]))
  return {
    lengthsMm: Object.fromEntries(
      problem.loops.map(({ id }) => {
        const { root, factor } = rooted.get(id)!
        return [id, factor * (mmOfRoot.get(root.id) ?? root.lengthMm)]
      }),
    ),
    openChangeMm: mmOfRoot.get(null) ?? problem.openChangeMm ?? 0,
  }
}
