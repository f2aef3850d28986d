import { diameterProblem, firstOf, lengthProblem, longestMm, type Problem, within } from './ranges.ts'
import { refused } from './refusal.ts'
import type { BoreSection, ProfileSection } from './section.ts'

const largestMm3 = 1e9
const mostPoints = 100_000

function profileProblem(path: string, { points }: ProfileSection): Problem {
  if (points.length < 2) return refused(`${path}.points`, points.length, 'two points or more').refusal
  if (points.length > mostPoints)
    return refused(`${path}.points`, points.length, 'at most 100000 points').refusal
  let before = Number.NEGATIVE_INFINITY
  for (const [index, [xMm, diameterMm]] of points.entries()) {
    const at = `${path}.points[${index}]`
    const problem = firstOf(
      () => within(`${at}[0]`, xMm, -longestMm, longestMm, 'a distance in mm'),
      () => diameterProblem(`${at}[1]`, diameterMm),
    )
    if (problem !== undefined) return problem
    if (xMm < before) return refused(`${at}[0]`, xMm, `a distance of ${before} mm or more`).refusal
    before = xMm
  }
  return undefined
}

/**
 * What is wrong with one section of a bore, or `undefined`; `path` is where it stands.
 *
 * @example sectionProblem({ kind: 'valves', diameterMm: 0 }, 'sections[2]')?.path // 'sections[2].diameterMm'
 */
export function sectionProblem(section: BoreSection, path: string): Problem {
  switch (section.kind) {
    case 'cup':
      return within(
        `${path}.volumeMm3`,
        section.volumeMm3,
        0,
        largestMm3,
        'a volume from 0 to 1000000000 mm³',
      )
    case 'cylinder':
      return firstOf(
        () => lengthProblem(`${path}.lengthMm`, section.lengthMm),
        () => diameterProblem(`${path}.diameterMm`, section.diameterMm),
      )
    case 'valves':
      return diameterProblem(`${path}.diameterMm`, section.diameterMm)
    case 'profile':
      return profileProblem(path, section)
    case 'cone':
    case 'bell':
      return firstOf(
        () => lengthProblem(`${path}.lengthMm`, section.lengthMm),
        () => diameterProblem(`${path}.startDiameterMm`, section.startDiameterMm),
        () => diameterProblem(`${path}.endDiameterMm`, section.endDiameterMm),
        () => (section.kind === 'bell' ? bellProblem(section, path) : undefined),
      )
  }
}

function bellProblem(
  bell: { readonly startDiameterMm: number; readonly endDiameterMm: number; readonly flare: number },
  path: string,
): Problem {
  if (bell.endDiameterMm < bell.startDiameterMm)
    return refused(
      `${path}.endDiameterMm`,
      bell.endDiameterMm,
      `${bell.startDiameterMm} mm or more: a bell widens`,
    ).refusal
  return within(`${path}.flare`, bell.flare, 0.05, 20, 'a flare from 0.05 to 20')
}
