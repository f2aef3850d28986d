import type { LengthProblem, LoopFreedom, SolverLoop, SolverRow } from './lengthProblem.ts'
import { type LengthRefusal, refusal } from './lengthRefusal.ts'

/**
 * Everything wrong with a problem that can be seen before it is solved; empty when it can be tried.
 * Contradicting bounds of tied loops and circles of ties are found by `tieLoops`.
 *
 * @example checkLengthProblem({ ...problem, rows: [] })[0]?.kind // 'allWeightsZero'
 */
export function checkLengthProblem(problem: LengthProblem): readonly LengthRefusal[] {
  const known = new Set(problem.loops.map((loop) => loop.id))
  return [
    ...checkOpen(problem),
    ...checkNames(
      problem.loops.map((loop) => loop.id),
      'loops',
      'id',
    ),
    ...checkNames(
      problem.rows.map((row) => row.name),
      'rows',
      'name',
    ),
    ...problem.loops.flatMap((loop, at) => checkLoop(loop, `loops[${at}]`, known)),
    ...problem.rows.flatMap((row, at) => checkRow(row, `rows[${at}]`, known)),
    ...checkThereIsSomethingToDo(problem),
  ]
}

function checkOpen({ openLengthMm, openChangeMm, open }: LengthProblem): readonly LengthRefusal[] {
  const change = openChangeMm ?? 0
  return [
    ...number(openLengthMm, 'openLengthMm', 'a length above 0', (value) => value > 0),
    ...number(
      change,
      'openChangeMm',
      'a change that leaves a length above 0',
      (value) => !(openLengthMm > 0) || openLengthMm + value > 0,
    ),
    ...(open.kind === 'free'
      ? checkEnds(open.lowestChangeMm, open.highestChangeMm, 'open.lowestChangeMm', 'open.highestChangeMm')
      : []),
  ]
}

function checkNames(names: readonly string[], list: string, field: string): readonly LengthRefusal[] {
  const met = new Set<string>()
  const refusals: LengthRefusal[] = []
  for (const [at, name] of names.entries()) {
    if (met.has(name))
      refusals.push(refusal('repeatedName', `${list}[${at}].${field}`, name, 'a name used once'))
    met.add(name)
  }
  return refusals
}

function checkLoop(loop: SolverLoop, path: string, known: ReadonlySet<string>): readonly LengthRefusal[] {
  return [
    ...number(loop.lengthMm, `${path}.lengthMm`, 'a length of at least 0', (value) => value >= 0),
    ...checkFreedom(loop.freedom, `${path}.freedom`, known),
  ]
}

function checkFreedom(
  freedom: LoopFreedom,
  path: string,
  known: ReadonlySet<string>,
): readonly LengthRefusal[] {
  if (freedom.kind === 'held') return []
  const ends = checkEnds(freedom.lowestMm, freedom.highestMm, `${path}.lowestMm`, `${path}.highestMm`, 0)
  if (freedom.kind === 'free') return ends
  return [
    ...ends,
    ...(known.has(freedom.to) ? [] : [refusal('unknownLoop', `${path}.to`, freedom.to, 'the id of a loop')]),
    ...number(freedom.factor, `${path}.factor`, 'a factor above 0', (value) => value > 0),
  ]
}

/** An end may be absent or infinite, but not NaN, and the ends must leave something between them. */
function checkEnds(
  lowest: number | undefined,
  highest: number | undefined,
  lowestPath: string,
  highestPath: string,
  least = Number.NEGATIVE_INFINITY,
): readonly LengthRefusal[] {
  const low = lowest ?? least
  const high = highest ?? Number.POSITIVE_INFINITY
  if (Number.isNaN(low) || low === Number.POSITIVE_INFINITY)
    return [refusal('notANumber', lowestPath, low, 'a length')]
  if (Number.isNaN(high) || high === Number.NEGATIVE_INFINITY)
    return [refusal('notANumber', highestPath, high, 'a length')]
  if (low < least) return [refusal('outOfRange', lowestPath, low, `at least ${least}`)]
  if (low > high) return [refusal('boundsContradict', highestPath, high, `at least ${low}`)]
  return []
}

function checkRow(row: SolverRow, path: string, known: ReadonlySet<string>): readonly LengthRefusal[] {
  const atLeastZero = (value: number) => value >= 0
  return [
    ...number(row.semitones, `${path}.semitones`, 'a number of semitones'),
    ...number(row.weight ?? 1, `${path}.weight`, 'a weight of at least 0', atLeastZero),
    ...number(row.offsetCents ?? 0, `${path}.offsetCents`, 'a number of cents'),
    ...number(row.reach?.sharpCents ?? 0, `${path}.reach.sharpCents`, 'cents of at least 0', atLeastZero),
    ...number(row.reach?.flatCents ?? 0, `${path}.reach.flatCents`, 'cents of at least 0', atLeastZero),
    ...row.loops.flatMap((id, at) => {
      const place = `${path}.loops[${at}]`
      if (!known.has(id)) return [refusal('unknownLoop', place, id, 'the id of a loop')]
      if (row.loops.indexOf(id) < at) return [refusal('repeatedName', place, id, 'each loop once')]
      return []
    }),
  ]
}

function checkThereIsSomethingToDo(problem: LengthProblem): readonly LengthRefusal[] {
  const nothingFree =
    problem.open.kind === 'held' && problem.loops.every((loop) => loop.freedom.kind !== 'free')
  return [
    ...(problem.rows.some((row) => row.weight !== 0)
      ? []
      : [refusal('allWeightsZero', 'rows', 'no weight above 0', 'a fingering that counts')]),
    ...(nothingFree
      ? [refusal('nothingFree', 'loops', 'nothing free', 'a free loop, or the open route free')]
      : []),
  ]
}

function number(
  value: number,
  path: string,
  expected: string,
  allowed: (value: number) => boolean = () => true,
): readonly LengthRefusal[] {
  if (!Number.isFinite(value)) return [refusal('notANumber', path, value, expected)]
  return allowed(value) ? [] : [refusal('outOfRange', path, value, expected)]
}
