import type { LoopFreedom, SolverLoop } from './lengthProblem.ts'
import { type LengthRefusal, refusal } from './lengthRefusal.ts'

/** A loop at the end of its ties: its length is `factor` times that of the free or held loop `root`. */
export interface RootedLoop {
  readonly root: SolverLoop
  readonly factor: number
}

/**
 * Follows every loop's ties to the free or held loop at their end, by loop id. Expects ties to known loops.
 * A circle is refused at the loop where it was met.
 *
 * @example tieLoops(loops) // C1 tied to L1 by 0.189: { root: L1, factor: 0.189 }
 */
export function tieLoops(
  loops: readonly SolverLoop[],
): ReadonlyMap<string, RootedLoop> | readonly LengthRefusal[] {
  const byId = new Map(loops.map((loop) => [loop.id, loop]))
  const rooted = new Map<string, RootedLoop>()
  const refusals: LengthRefusal[] = []
  for (const [at, loop] of loops.entries()) {
    const end = followTies(loop, byId)
    if (end) rooted.set(loop.id, end)
    else refusals.push(circle(loop, at))
  }
  return refusals.length > 0 ? refusals : rooted
}

function followTies(loop: SolverLoop, byId: ReadonlyMap<string, SolverLoop>): RootedLoop | null {
  let root = loop
  let factor = 1
  const met = new Set([loop.id])
  while (root.freedom.kind === 'tied') {
    factor *= root.freedom.factor
    const next = byId.get(root.freedom.to)
    if (!next) throw new Error(`Loop ${root.id} is tied to ${root.freedom.to}, which is not there.`)
    if (met.has(next.id)) return null
    met.add(next.id)
    root = next
  }
  return { root, factor }
}

function circle(loop: SolverLoop, at: number): LengthRefusal {
  const to = (loop.freedom as Extract<LoopFreedom, { kind: 'tied' }>).to
  return refusal('tiedInCircle', `loops[${at}].freedom.to`, to, 'ties that end at a free or held loop')
}
