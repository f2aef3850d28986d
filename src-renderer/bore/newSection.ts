import type { BoreSection } from '#shared/bore/section.ts'
import type { DesignSection } from '#shared/workbook/bore.ts'

/** Kinds that a person adds one at a time; profiles come in from measurements. */
export const addedKinds = ['cylinder', 'cone', 'bell', 'cup'] as const
export type AddedKind = (typeof addedKinds)[number]

const usualLengthMm = 100
const usualDiameterMm = 12

/** A new section that goes on where the one before it ends. */
export function newSection(kind: AddedKind, before: BoreSection | undefined): DesignSection {
  return ofKind(kind, usualLengthMm, endOf(before), endOf(before) * (kind === 'bell' ? 2 : 1))
}

/** A section of another kind in the place of one: as long, with the same ends, under the same name. */
export function changedKind(section: DesignSection, kind: AddedKind): DesignSection {
  const lengthMm = 'lengthMm' in section ? section.lengthMm : usualLengthMm
  const start = startOf(section)
  const changed = ofKind(
    kind,
    lengthMm,
    start,
    kind === 'bell' ? Math.max(start, endOf(section)) : endOf(section),
  )
  return section.name === undefined ? changed : { ...changed, name: section.name }
}

function ofKind(
  kind: AddedKind,
  lengthMm: number,
  startDiameterMm: number,
  endDiameterMm: number,
): DesignSection {
  switch (kind) {
    case 'cup':
      return { kind, volumeMm3: 1000 }
    case 'cylinder':
      return { kind, lengthMm, diameterMm: startDiameterMm }
    case 'cone':
      return { kind, lengthMm, startDiameterMm, endDiameterMm }
    case 'bell':
      return { kind, lengthMm, startDiameterMm, endDiameterMm, flare: 0.7 }
  }
}

function startOf(section: BoreSection): number {
  if (section.kind === 'cup') return usualDiameterMm
  if (section.kind === 'profile') return section.points[0]?.[1] ?? usualDiameterMm
  return 'diameterMm' in section ? section.diameterMm : section.startDiameterMm
}

function endOf(section: BoreSection | undefined): number {
  if (section === undefined || section.kind === 'cup') return usualDiameterMm
  if (section.kind === 'profile') return section.points.at(-1)?.[1] ?? usualDiameterMm
  return 'diameterMm' in section ? section.diameterMm : section.endDiameterMm
}
