import type { BoreSection } from './section.ts'
import { type Cursor, cutBell, cutCone, type Slice } from './slice.ts'

/** A bore cut into slices at the valves' place. */
export interface CutBore {
  readonly before: readonly Slice[]
  readonly after: readonly Slice[]
  /** Absent when the bore has no place for valves; every slice is then in `after`. */
  readonly valves?: { readonly atM: number; readonly diameterM: number }
  readonly lengthM: number
  /** Of the first tube. */
  readonly lipsDiameterM: number
  readonly mouthRadiusM: number
}

/**
 * Cuts a checked bore into slices. Each slice's error goes with its length cubed times its curvature (a bell) or the
 * change of its losses (a cone), so the cuts are spread to make those equal; each of `halvings` cuts every slice in two
 * and the whole error falls to a quarter. A cylinder is exact in one slice, whatever its length.
 *
 * @example cutBore([{ kind: 'cylinder', lengthMm: 1400, diameterMm: 11.66 }], 2, 36).after.length // 1
 */
export function cutBore(sections: readonly BoreSection[], halvings: number, waveNumber: number): CutBore {
  const cursor: Cursor = { atM: 0, radiusM: 0, slices: [], halvings, waveNumber }
  let valves: CutBore['valves'] | undefined
  let slicesBefore = 0
  for (const section of sections) {
    if (section.kind === 'valves') {
      valves = { atM: cursor.atM, diameterM: section.diameterMm / 1000 }
      slicesBefore = cursor.slices.length
      cursor.radiusM = section.diameterMm / 2000
    } else {
      cutSection(section, cursor)
    }
  }
  return {
    before: cursor.slices.slice(0, slicesBefore),
    after: cursor.slices.slice(slicesBefore),
    ...(valves === undefined ? {} : { valves }),
    lengthM: cursor.atM,
    lipsDiameterM:
      2 * (cursor.slices.find((slice) => slice.volumeM3 === undefined)?.startRadiusM ?? cursor.radiusM),
    mouthRadiusM: cursor.radiusM,
  }
}

function cutSection(section: Exclude<BoreSection, { kind: 'valves' }>, cursor: Cursor): void {
  switch (section.kind) {
    case 'cup':
      cursor.slices.push({
        middleM: cursor.atM,
        lengthM: 0,
        startRadiusM: 1,
        endRadiusM: 1,
        volumeM3: section.volumeMm3 * 1e-9,
      })
      break
    case 'cylinder':
      cutCone(section.lengthMm / 1000, section.diameterMm / 2000, section.diameterMm / 2000, cursor)
      break
    case 'cone':
      cutCone(section.lengthMm / 1000, section.startDiameterMm / 2000, section.endDiameterMm / 2000, cursor)
      break
    case 'bell':
      cutBell(
        section.lengthMm / 1000,
        section.startDiameterMm / 2000,
        section.endDiameterMm / 2000,
        section.flare,
        cursor,
      )
      break
    case 'profile':
      for (let i = 1; i < section.points.length; i++) {
        const [x1, d1] = section.points[i - 1]!
        const [x2, d2] = section.points[i]!
        cutCone((x2 - x1) / 1000, d1 / 2000, d2 / 2000, cursor)
      }
  }
}
