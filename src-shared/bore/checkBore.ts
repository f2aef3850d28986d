import { sectionProblem } from './checkSection.ts'
import { diameterProblem, firstOf, lengthProblem, longestMm, within } from './ranges.ts'
import { type BoreRefusal, refused } from './refusal.ts'
import type { BoreConditions, BoreSection, Insert } from './section.ts'

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

/** Air that the bore's calculations are made for, °C. */
export const boreAirC = { coldest: -30, warmest: 60 } as const

/**
 * What is wrong with the temperatures, or `undefined`.
 *
 * @example conditionsProblem({ temperatureC: Number.NaN })?.path // 'temperatureC'
 */
export function conditionsProblem(conditions: BoreConditions): BoreRefusal | undefined {
  const { temperatureC, bellTemperatureC = temperatureC } = conditions
  const { coldest, warmest } = boreAirC
  const what = `a temperature from ${coldest} to ${warmest} °C`
  return firstOf(
    () => within('temperatureC', temperatureC, coldest, warmest, what),
    () => within('bellTemperatureC', bellTemperatureC, coldest, warmest, what),
  )
}
