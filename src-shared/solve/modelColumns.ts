import type { LengthProblem, SolverLoop } from './lengthProblem.ts'
import { type LengthRefusal, refusal } from './lengthRefusal.ts'
import type { RootedLoop } from './tieLoops.ts'

/** What the solvers move: a free loop with those tied to it, or the change of the open route. */
export interface Column {
  /** The free loop; `null` for the open route. */
  readonly rootId: string | null
  /** In the model's unit. */
  readonly start: number
  readonly lowest: ColumnEnd
  readonly highest: ColumnEnd
}

/** An end of a column, in the model's unit, perhaps infinite, and whose bound it is. */
export interface ColumnEnd {
  readonly at: number
  /** The loop whose bound it is; `null` for the open route. */
  readonly loopId: string | null
  readonly atMm: number
  /** Length of that loop over that of the column. */
  readonly factor: number
  readonly path: string
}

/**
 * The columns of a checked problem: free loops in their order, then the open route when it is free. A column's
 * ends are the closest of its own and of the loops tied to it; it starts at its present length, or at the end
 * nearest to that. Where the ends contradict each other a refusal stands in the column's place.
 *
 * @example columnBounds(problem, rooted, 1).length
 */
export function columnBounds(
  problem: LengthProblem,
  rooted: ReadonlyMap<string, RootedLoop>,
  unitMm: number,
): readonly (Column | LengthRefusal)[] {
  const ends = problem.loops.flatMap((loop, at) => loopEnds(loop, at, rooted.get(loop.id)!, unitMm))
  const loopColumns = problem.loops
    .filter((loop) => loop.freedom.kind === 'free')
    .map((loop) => column(loop.id, loop.lengthMm / unitMm, ends))
  const heldOut = problem.loops
    .filter((loop) => loop.freedom.kind === 'held')
    .map((loop) => column(loop.id, loop.lengthMm / unitMm, ends))
    .filter((held) => 'kind' in held)
  const open = problem.open.kind === 'free' ? [openColumn(problem, unitMm)] : []
  return [...loopColumns, ...heldOut, ...open]
}

type SidedEnd = ColumnEnd & { readonly rootId: string | null; readonly side: 'lowest' | 'highest' }

function loopEnds(loop: SolverLoop, at: number, { root, factor }: RootedLoop, unitMm: number): SidedEnd[] {
  const end = (side: 'lowest' | 'highest', atMm: number, field: string): SidedEnd => ({
    rootId: root.id,
    side,
    at: atMm / factor / unitMm,
    loopId: loop.id,
    atMm,
    factor,
    path: `loops[${at}].${field}`,
  })
  if (loop.freedom.kind === 'held') {
    return [end('lowest', loop.lengthMm, 'lengthMm'), end('highest', loop.lengthMm, 'lengthMm')]
  }
  const { lowestMm = 0, highestMm = Number.POSITIVE_INFINITY } = loop.freedom
  return [end('lowest', lowestMm, 'freedom.lowestMm'), end('highest', highestMm, 'freedom.highestMm')]
}

function column(rootId: string | null, present: number, ends: readonly SidedEnd[]): Column | LengthRefusal {
  const own = ends.filter((end) => end.rootId === rootId)
  const closest = (side: 'lowest' | 'highest', closer: (a: number, b: number) => boolean) =>
    own.filter((end) => end.side === side).reduce((best, end) => (closer(end.at, best.at) ? end : best))
  const lowest = closest('lowest', (a, b) => a > b)
  const highest = closest('highest', (a, b) => a < b)
  // A tied bound is divided by its factor, and may miss an equal one by a rounding.
  const rounding = 1e-9 * Math.abs(lowest.at)
  if (lowest.at > highest.at + rounding) {
    const expected = `at least ${lowest.at === 0 ? 0 : lowest.atMm * (highest.factor / lowest.factor)}, because of ${lowest.path}`
    return refusal('boundsContradict', highest.path, highest.atMm, expected)
  }
  const high = { ...highest, at: Math.max(lowest.at, highest.at) }
  return { rootId, start: Math.min(Math.max(present, lowest.at), high.at), lowest, highest: high }
}

function openColumn(problem: LengthProblem, unitMm: number): Column | LengthRefusal {
  if (problem.open.kind !== 'free') throw new Error('The open route is held.')
  const { lowestChangeMm = Number.NEGATIVE_INFINITY, highestChangeMm = Number.POSITIVE_INFINITY } =
    problem.open
  const end = (side: 'lowest' | 'highest', atMm: number, path: string): SidedEnd => ({
    rootId: null,
    side,
    at: atMm / unitMm,
    loopId: null,
    atMm,
    factor: 1,
    path,
  })
  return column(null, (problem.openChangeMm ?? 0) / unitMm, [
    end('lowest', lowestChangeMm, 'open.lowestChangeMm'),
    end('highest', highestChangeMm, 'open.highestChangeMm'),
  ])
}
