import { insertsProblem, sectionsProblem } from '../bore/checkBore.ts'
import { insertsOfLoops } from '../bore/fingeringModes.ts'
import type { Bore } from './bore.ts'
import { type Failure, failure } from './failure.ts'
import type { Design } from './workbook.ts'

/**
 * Checks the rules of a design's bore that span several of its values: one place for the valves, tube of 1 mm or
 * more, a bell that widens, a profile's distances in order, bows that a loop of that bore can have, targets and
 * weights that are not all 0.
 *
 * @param at the design's path, for the refusal
 * @returns the first rule that is broken; `null` when none is, or the design has no bore
 * @example brokenBoreRule({ ...design, bore: { sections: [] } }, 'designs[0]')?.path // 'designs[0].bore.sections'
 */
export function brokenBoreRule({ bore, loops }: Design, at: string): Failure | null {
  if (bore === undefined) return null
  return brokenSections(bore, at) ?? brokenBow(bore, loops, at) ?? brokenAims(bore, at)
}

function brokenSections({ sections }: Bore, at: string): Failure | null {
  const problem = sectionsProblem(sections)
  if (problem !== undefined)
    return failure('brokenRule', `${at}.bore.${problem.path}`, problem.found, problem.expected)
  if (sections.some(({ kind }) => kind === 'valves')) return null
  return failure('brokenRule', `${at}.bore.sections`, 'no place for the valves', 'one place for the valves')
}

/** A bow is bent no closer than half the bore, which may be that of the valves. */
function brokenBow({ sections }: Bore, loops: Design['loops'], at: string): Failure | null {
  const valves = sections.find(({ kind }) => kind === 'valves')
  if (valves?.kind !== 'valves') return null
  const problem = insertsProblem(insertsOfLoops(loops, valves.diameterMm))
  if (problem === undefined) return null
  const path = problem.path.replace('inserts', `${at}.loops`)
  return failure('brokenRule', path, problem.found, problem.expected)
}

function brokenAims({ targets, harmonicWeights }: Bore, at: string): Failure | null {
  const seen = new Set<number>()
  for (const [i, { mode }] of (targets ?? []).entries()) {
    if (seen.has(mode))
      return failure('brokenRule', `${at}.bore.targets[${i}].mode`, `mode ${mode} again`, 'each mode once')
    seen.add(mode)
  }
  const lists = [
    [`${at}.bore.targets`, targets?.map(({ weight }) => weight ?? 1)],
    [`${at}.bore.harmonicWeights`, harmonicWeights],
  ] as const
  const idle = lists.find(([, weights]) => weights?.every((weight) => weight === 0))
  return idle === undefined ? null : failure('brokenRule', idle[0], 'no weight above 0', 'one weight above 0')
}
