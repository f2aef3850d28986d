import { largestAt, leastLargest } from './leastLargest.ts'
import { leastSquares } from './leastSquares.ts'
import { type LengthsAndErrors, lengthsAndErrors } from './lengthAnswer.ts'
import type { LengthProblem } from './lengthProblem.ts'
import type { LengthRefusal } from './lengthRefusal.ts'
import type { LinearProgrammer } from './linearProgrammer.ts'
import { capHalfSpaces, endHalfSpaces } from './modelHalfSpaces.ts'
import { type PreparedProblem, prepareProblem, vanishingRoutes } from './prepareProblem.ts'
import { capRoomCents, widestFirstCap } from './solveLengths.ts'

/** Ends of the curve nearer than this, cents, are one point. */
const sameCents = 1e-3

/** A curve from the least rms to the least largest error, or why there is none. */
export type TradeOff =
  | { readonly status: 'converged' | 'stopped'; readonly points: readonly LengthsAndErrors[] }
  | { readonly status: 'refused'; readonly refusals: readonly LengthRefusal[] }
  | { readonly status: 'programFailed'; readonly reason: string }

/**
 * The trade between the two objectives: `count` (at least 2) sets of lengths, the first of least rms, the last
 * of least largest error, each between them of least rms among those whose largest weighted error passes no
 * more than its even share. The problem's own objective is not looked at. One point when one set does both.
 *
 * @example tradeOff(problem, 9, programmer)
 */
export function tradeOff(problem: LengthProblem, count: number, programmer: LinearProgrammer): TradeOff {
  if (!Number.isInteger(count) || count < 2) throw new RangeError(`A curve of ${count} points has no ends.`)
  const prepared = prepareProblem(problem)
  if ('refusals' in prepared) return { status: 'refused', refusals: prepared.refusals }
  const first = within(prepared, prepared.start, Number.POSITIVE_INFINITY)
  if (!first) throw new Error('Bounds that were checked cannot contradict each other.')
  const widest = largestAt(prepared.model, first.point)
  const least = leastLargest(prepared.model, Math.min(widest, widestFirstCap), programmer)
  if (least.kind === 'failed') return { status: 'programFailed', reason: least.reason }
  if (least.kind === 'stopped')
    return { status: 'stopped', points: [lengthsAndErrors(prepared, first.point)] }
  return curve(prepared, first, capsBetween(widest, least.largestCents, count))
}

function capsBetween(widest: number, narrowest: number, count: number): readonly number[] {
  if (widest - narrowest < sameCents) return []
  const steps = count - 1
  return Array.from(
    { length: steps },
    (_, at) => narrowest + ((widest - narrowest) * (steps - 1 - at)) / steps,
  )
}

function curve(prepared: PreparedProblem, first: Found, caps: readonly number[]): TradeOff {
  const found = [first]
  for (const cap of caps) {
    const next = within(prepared, first.point, cap)
    if (!next) return { status: 'programFailed', reason: `no lengths within ${cap} cents` }
    found.push(next)
  }
  const refusals = found.flatMap(({ point }) => vanishingRoutes(prepared.model, point))
  if (refusals.length > 0) return { status: 'refused', refusals }
  const status = found.every(({ kind }) => kind === 'converged') ? 'converged' : 'stopped'
  return { status, points: found.map(({ point }) => lengthsAndErrors(prepared, point)) }
}

interface Found {
  readonly kind: 'converged' | 'stopped'
  readonly point: Float64Array
}

/** Least rms whose largest weighted error is within a cap; `null` when there is none. */
function within({ model }: PreparedProblem, start: Float64Array, cap: number): Found | null {
  const caps = cap === Number.POSITIVE_INFINITY ? [] : capHalfSpaces(model, cap + capRoomCents)
  const found = leastSquares(model, start, [...endHalfSpaces(model), ...caps])
  return found.kind === 'infeasible' ? null : found
}
