import { sectionLengthMm } from '#shared/bore/checkBore.ts'
import type { ProfileSection } from '#shared/bore/section.ts'
import { setBore } from '#shared/workbook/commands/boreCommands.ts'
import { replaceByProfile } from '#shared/workbook/commands/boreShapeCommands.ts'
import { type Command, recorded } from '#shared/workbook/commands/command.ts'

/** Where valves usually stand, of the whole length: to be said better. */
const usualShare = 0.2

/** A place for the valves to start from, mm from the first point. */
export function usualValvesMm(profile: ProfileSection): number {
  return Math.round(usualShare * sectionLengthMm(profile))
}

/** Makes a measured profile a design's bore, with the valves at a distance from its first point: one step. */
export function setMeasuredBore(designId: string, profile: ProfileSection, valvesAtMm: number): Command {
  const lengthMm = sectionLengthMm(profile)
  const diameterMm = diameterAt(profile, valvesAtMm)
  const alongMm = Math.max(0, Math.min(lengthMm, valvesAtMm))
  const placed = setBore(designId, {
    sections: [
      { kind: 'cylinder', lengthMm: alongMm, diameterMm },
      { kind: 'valves', diameterMm },
      { kind: 'cylinder', lengthMm: lengthMm - alongMm, diameterMm },
    ],
  })
  const measured = replaceByProfile(designId, 0, 3, profile)
  return recorded(measured.name, (workbook) => measured.apply(placed.apply(workbook)))
}

function diameterAt({ points }: ProfileSection, alongMm: number): number {
  const atMm = (points[0]?.[0] ?? 0) + alongMm
  const beyond = points.findIndex(([x]) => x >= atMm)
  const [after, before] = [points[beyond < 0 ? points.length - 1 : beyond], points[beyond - 1]]
  if (after === undefined) return 0
  if (before === undefined || after[0] === before[0] || beyond < 0) return after[1]
  const diameter = before[1] + ((after[1] - before[1]) * (atMm - before[0])) / (after[0] - before[0])
  return Math.round(diameter * 1000) / 1000
}
