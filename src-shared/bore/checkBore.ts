import { type BoreRefusal, refused } from './refusal.ts'
import type { BoreConditions, BoreSection, Insert, ProfileSection } from './section.ts'

const longestMm = 1e6
const widestMm = 1e4
const largestMm3 = 1e9
const mostPoints = 100_000

type Problem = BoreRefusal | undefined

function within(path: string, value: number, low: number, high: number, what: string): Problem {
  const good = Number.isFinite(value) && value >= low && value <= high
  return good ? undefined : refused(path, value, what).refusal
}

const lengthProblem = (path: string, value: number) =>
  within(path, value, 0, longestMm, 'a length from 0 to 1000000 mm')

const diameterProblem = (path: string, value: number) =>
  within(path, value, 0.1, widestMm, 'a diameter from 0.1 to 10000 mm')

/** The first problem of a list; later ones are not asked for. */
function firstOf(...asked: readonly (() => Problem)[]): Problem {
  for (const ask of asked) {
    const problem = ask()
    if (problem !== undefined) return problem
  }
  return undefined
}

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

function sectionProblem(section: BoreSection, path: string): Problem {
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

/**
 * What is wrong with a bore's sections, or `undefined`. Lengths of 0, equal diameters and converging cones are
 * fine; a bore without any tube, a second place for the valves or a number that is not one is refused.
 *
 * @example sectionsProblem([{ kind: 'cylinder', lengthMm: -1, diameterMm: 11 }])?.path // 'sections[0].lengthMm'
 */
export function sectionsProblem(sections: readonly BoreSection[]): BoreRefusal | undefined {
  let places = 0
  for (const [index, section] of sections.entries()) {
    const problem = sectionProblem(section, `sections[${index}]`)
    if (problem !== undefined) return problem
    if (section.kind === 'valves' && ++places > 1)
      return refused(`sections[${index}]`, 'a second place for the valves', 'one place for the valves')
        .refusal
  }
  const totalMm = boreLengthMm(sections)
  if (totalMm < 1) return refused('sections', `${totalMm} mm of tube`, 'tube of 1 mm or more').refusal
  return within('sections', totalMm, 1, longestMm, 'at most 1000000 mm of tube')
}

/**
 * Centre-line length of a bore without loops, mm. A cup and the valves' place have none.
 *
 * @example boreLengthMm([{ kind: 'cylinder', lengthMm: 1400, diameterMm: 11.66 }]) // 1400
 */
export function boreLengthMm(sections: readonly BoreSection[]): number {
  return sections.reduce((sum, section) => sum + sectionLengthMm(section), 0)
}

/**
 * Length of one section, mm.
 *
 * @example sectionLengthMm({ kind: 'profile', points: [[5, 10], [25, 12]] }) // 20
 */
export function sectionLengthMm(section: BoreSection): number {
  if (section.kind === 'cup' || section.kind === 'valves') return 0
  if (section.kind !== 'profile') return section.lengthMm
  return (section.points.at(-1)?.[0] ?? 0) - (section.points[0]?.[0] ?? 0)
}

/**
 * What is wrong with the loops put in at the valves, or `undefined`.
 *
 * @example insertsProblem([{ lengthMm: 100, diameterMm: 12, bendRadiusMm: 4 }])?.path // 'inserts[0].bendRadiusMm'
 */
export function insertsProblem(inserts: readonly Insert[]): BoreRefusal | undefined {
  for (const [index, { lengthMm, diameterMm, bendRadiusMm }] of inserts.entries()) {
    const path = `inserts[${index}]`
    const problem = firstOf(
      () => lengthProblem(`${path}.lengthMm`, lengthMm),
      () => diameterProblem(`${path}.diameterMm`, diameterMm),
      () =>
        bendRadiusMm === undefined
          ? undefined
          : within(
              `${path}.bendRadiusMm`,
              bendRadiusMm,
              diameterMm / 2,
              longestMm,
              'at least half the bore, mm',
            ),
    )
    if (problem !== undefined) return problem
  }
  return undefined
}

/**
 * What is wrong with the temperatures, or `undefined`.
 *
 * @example conditionsProblem({ temperatureC: Number.NaN })?.path // 'temperatureC'
 */
export function conditionsProblem(conditions: BoreConditions): BoreRefusal | undefined {
  const what = 'a temperature from -30 to 60 °C'
  return firstOf(
    () => within('temperatureC', conditions.temperatureC, -30, 60, what),
    () => within('bellTemperatureC', conditions.bellTemperatureC ?? conditions.temperatureC, -30, 60, what),
  )
}
