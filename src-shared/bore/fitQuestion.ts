import type { FreeDimension, ModeTarget } from './fitBore.ts'
import { refused } from './refusal.ts'
import type { BoreSection } from './section.ts'

/**
 * The present value of a free dimension; `undefined` where its section has none.
 *
 * @example valueAt(sections, { section: 0, dimension: 'lengthMm', lowest: 0, highest: 9 }) // 1400
 */
export function valueAt(
  sections: readonly BoreSection[],
  { section, dimension }: FreeDimension,
): number | undefined {
  const found: unknown = (sections[section] as unknown as Record<string, unknown> | undefined)?.[dimension]
  return typeof found === 'number' ? found : undefined
}

/**
 * What is wrong with the dimensions set free, or `undefined`.
 *
 * @example freeProblem(sections, [])?.refusal.path // 'free'
 */
export function freeProblem(sections: readonly BoreSection[], free: readonly FreeDimension[]) {
  if (free.length === 0 || free.length > 8)
    return refused('free', free.length, 'one to eight free dimensions')
  for (const [i, dimension] of free.entries()) {
    const kind = sections[dimension.section]?.kind ?? 'no section'
    if (valueAt(sections, dimension) === undefined)
      return refused(
        `free[${i}].dimension`,
        `${dimension.dimension} of ${kind}`,
        'a dimension that the section has',
      )
    if (
      !(Number.isFinite(dimension.lowest) && dimension.highest > dimension.lowest && dimension.highest < 1e9)
    )
      return refused(`free[${i}].highest`, dimension.highest, `a bound above ${dimension.lowest}`)
  }
  return undefined
}

/**
 * What is wrong with the targets, or `undefined`.
 *
 * @example targetsProblem([])?.refusal.path // 'targets'
 */
export function targetsProblem(targets: readonly ModeTarget[]) {
  if (targets.length === 0) return refused('targets', 0, 'one target or more')
  for (const [i, { mode, hz, weight = 1 }] of targets.entries()) {
    if (!Number.isInteger(mode) || mode < 1 || mode > 64)
      return refused(`targets[${i}].mode`, mode, 'a mode from 1 to 64')
    if (!(hz > 0 && hz < 1e5)) return refused(`targets[${i}].hz`, hz, 'a frequency above 0 Hz')
    if (!(weight >= 0 && weight < 1e9))
      return refused(`targets[${i}].weight`, weight, 'a weight of 0 or more')
  }
  return targets.some(({ weight }) => weight !== 0)
    ? undefined
    : refused('targets', 'weights of 0 only', 'one weight above 0')
}
