import { sectionLengthMm } from '../../bore/checkBore.ts'
import { moveJoint } from '../../bore/outline.ts'
import type { ProfileSection } from '../../bore/section.ts'
import type { DesignSection } from '../bore.ts'
import { withSections } from './boreCommands.ts'
import { type Command, coalesced, recorded } from './command.ts'

type Points = ProfileSection['points']

/**
 * Moves the joint after section `index` towards the bell, mm, negative towards the lips: one section grows, the next
 * shrinks. It stops where one would be gone; next to a measured profile it does not move at all.
 */
export function moveBoreJoint(designId: string, index: number, byMm: number): Command {
  return coalesced(
    'Move joint',
    `${designId} joint ${index}`,
    withSections(designId, (sections) => {
      const joined = moveJoint(sections, index, withinNeighbours(sections, index, byMm))
      return joined.ok && byMm !== 0 ? joined.value : sections
    }),
  )
}

function withinNeighbours(sections: readonly DesignSection[], index: number, byMm: number): number {
  const next = sections.findIndex(
    (section, i) => i > index && section.kind !== 'valves' && section.kind !== 'cup',
  )
  const before = sections[index]
  const after = sections[next]
  if (before === undefined || after === undefined) return byMm
  return Math.max(-sectionLengthMm(before), Math.min(sectionLengthMm(after), byMm))
}

/**
 * Puts a measured profile in the place of `count` sections from `index` on. Where the valves stood among them they stand
 * again, as far along as before: the profile is parted there.
 */
export function replaceByProfile(
  designId: string,
  index: number,
  count: number,
  profile: ProfileSection & { readonly name?: string },
): Command {
  return recorded(
    'Measured profile',
    withSections(designId, (sections) => {
      const replaced = sections.slice(index, index + count)
      if (replaced.length === 0) return sections
      return sections.toSpliced(index, count, ...aroundValves(replaced, profile))
    }),
  )
}

function aroundValves(
  replaced: readonly DesignSection[],
  profile: ProfileSection & { readonly name?: string },
): readonly DesignSection[] {
  const at = replaced.findIndex(({ kind }) => kind === 'valves')
  const valves = replaced[at]
  if (valves === undefined) return [profile]
  const alongMm = replaced.slice(0, at).reduce((sum, section) => sum + sectionLengthMm(section), 0)
  const [before, after] = partedAt(profile.points, alongMm)
  const part = (points: Points) => (points.length < 2 ? [] : [{ ...profile, points }])
  return [...part(before), valves, ...part(after)]
}

/** Points up to a distance from the first and those beyond it; the point of parting belongs to both. */
function partedAt(points: Points, alongMm: number): readonly [Points, Points] {
  const atMm = (points[0]?.[0] ?? 0) + alongMm
  const beyond = points.findIndex(([x]) => x >= atMm)
  if (beyond < 0) return [points, []]
  if (beyond === 0) return [[], points]
  const [x1, d1] = points[beyond - 1]!
  const [x2, d2] = points[beyond]!
  const parting = [atMm, d1 + ((d2 - d1) * (atMm - x1)) / (x2 - x1)] as const
  const rest = points.slice(x2 === atMm ? beyond + 1 : beyond)
  const after = rest.length === 0 ? [] : [parting, ...rest]
  return [[...points.slice(0, beyond), parting], after]
}
