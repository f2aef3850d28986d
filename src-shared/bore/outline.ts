import { sectionLengthMm } from './checkBore.ts'
import { accepted, type BoreResult, refused } from './refusal.ts'
import type { BoreSection } from './section.ts'

/** A bore as it is drawn: points along the wall, and where its sections meet. */
export interface BoreOutline {
  /** Distance from the lips and diameter, mm; a step has two points at one distance. */
  readonly points: readonly (readonly [xMm: number, diameterMm: number])[]
  /** Where each section begins, and the end of the last: one more than there are sections. */
  readonly jointsMm: readonly number[]
  /** `null` for a bore without a place for the valves. */
  readonly valvesAtMm: number | null
}

const pointsOfBell = 48

/**
 * The outline of a checked bore without its loops. A cup has no length and no points.
 *
 * @example boreOutline([{ kind: 'cylinder', lengthMm: 100, diameterMm: 12 }]).points // [[0, 12], [100, 12]]
 */
export function boreOutline(sections: readonly BoreSection[]): BoreOutline {
  const points: (readonly [number, number])[] = []
  const jointsMm = [0]
  let valvesAtMm: number | null = null
  for (const section of sections) {
    const fromMm = jointsMm.at(-1)!
    if (section.kind === 'valves') valvesAtMm = fromMm
    for (const [x, diameter] of wallOf(section)) points.push([fromMm + x, diameter])
    jointsMm.push(fromMm + sectionLengthMm(section))
  }
  return { points, jointsMm, valvesAtMm }
}

function wallOf(section: BoreSection): readonly (readonly [number, number])[] {
  switch (section.kind) {
    case 'cup':
    case 'valves':
      return []
    case 'cylinder':
      return [
        [0, section.diameterMm],
        [section.lengthMm, section.diameterMm],
      ]
    case 'cone':
      return [
        [0, section.startDiameterMm],
        [section.lengthMm, section.endDiameterMm],
      ]
    case 'profile': {
      const originMm = section.points[0]?.[0] ?? 0
      return section.points.map(([x, diameter]) => [x - originMm, diameter] as const)
    }
    case 'bell':
      return bellWall(section)
  }
}

/** Denser towards the rim, where the wall bends. */
function bellWall({
  lengthMm,
  startDiameterMm,
  endDiameterMm,
  flare,
}: Extract<BoreSection, { kind: 'bell' }>): readonly (readonly [number, number])[] {
  const mouthMm = lengthMm / ((endDiameterMm / startDiameterMm) ** (1 / flare) - 1)
  return Array.from({ length: pointsOfBell + 1 }, (_, i) => {
    const x = lengthMm * (1 - (1 - i / pointsOfBell) ** 2)
    if (i === 0) return [0, startDiameterMm] as const
    if (i === pointsOfBell) return [lengthMm, endDiameterMm] as const
    if (!Number.isFinite(mouthMm)) return [x, startDiameterMm] as const
    return [x, endDiameterMm * (mouthMm / (mouthMm + lengthMm - x)) ** flare] as const
  })
}

/**
 * Moves the joint between section `index` and the next one that has a length, towards the bell for a positive
 * `byMm`: one grows, the other shrinks, the whole stays as long as it was. Refused where one would get shorter than
 * nothing or is a measured profile.
 *
 * @example moveJoint(sections, 2, -5)
 */
export function moveJoint(
  sections: readonly BoreSection[],
  index: number,
  byMm: number,
): BoreResult<readonly BoreSection[]> {
  const next = sections.findIndex(
    (section, i) => i > index && section.kind !== 'valves' && section.kind !== 'cup',
  )
  const grown = lengthened(sections[index], byMm, `sections[${index}]`)
  if (!grown.ok) return grown
  const shrunk = lengthened(sections[next], -byMm, `sections[${next}]`)
  if (!shrunk.ok) return shrunk
  return accepted(
    sections.map((section, i) => (i === index ? grown.value : i === next ? shrunk.value : section)),
  )
}

function lengthened(section: BoreSection | undefined, byMm: number, path: string): BoreResult<BoreSection> {
  if (section === undefined || !('lengthMm' in section))
    return refused(path, section?.kind ?? 'no section', 'a cylinder, a cone or a bell')
  const lengthMm = section.lengthMm + byMm
  if (!(lengthMm >= 0 && lengthMm <= 1e6))
    return refused(`${path}.lengthMm`, lengthMm, 'a length from 0 to 1000000 mm')
  return accepted({ ...section, lengthMm })
}
