import type { BoreSection } from './section.ts'

/** A piece of a bore as it is reckoned: straight sides, SI units. `volumeM3` is set for a cup alone. */
export interface Slice {
  /** Distance of its middle from the lips, without loops. */
  readonly middleM: number
  readonly lengthM: number
  readonly startRadiusM: number
  readonly endRadiusM: number
  readonly volumeM3?: number
}

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

/** Slices a unit of the monitors below, before any halving. */
const slicesPerUnit = 5
/** A piece that needs no more than this share of a slice is left whole, so that a dense profile stays as it is. */
const leftWhole = 0.2
/** Straight sides are exact in shape; only the wall's losses change along a slice, by about this share. */
const lossShare = 0.02

interface Cursor {
  atM: number
  radiusM: number
  readonly slices: Slice[]
  /** How often every slice is halved. */
  readonly halvings: number
  /** 2π over the shortest wavelength of interest, 1/m. */
  readonly waveNumber: number
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

function slicesFor(monitor: number, cursor: Cursor): number {
  const share = slicesPerUnit * monitor
  return share > leftWhole ? Math.ceil(share) * 2 ** cursor.halvings : 1
}

function addSlice(cursor: Cursor, lengthM: number, startRadiusM: number, endRadiusM: number): void {
  if (lengthM > 0)
    cursor.slices.push({ middleM: cursor.atM + lengthM / 2, lengthM, startRadiusM, endRadiusM })
  cursor.atM += lengthM
  cursor.radiusM = endRadiusM
}

/** Equal shares of r^(1/3) make the slices' loss errors equal. */
function cutCone(lengthM: number, startM: number, endM: number, cursor: Cursor): void {
  const slope = Math.abs(endM - startM) / lengthM
  const from = Math.cbrt(startM)
  const to = Math.cbrt(endM)
  const monitor = (3 * Math.abs(to - from) * Math.cbrt(lossShare * cursor.waveNumber)) / Math.cbrt(slope)
  const count = lengthM > 0 && startM !== endM ? slicesFor(monitor, cursor) : 1
  const radius = (i: number) =>
    i === 0 ? startM : i === count ? endM : (from + ((to - from) * i) / count) ** 3
  for (let i = 0; i < count; i++) {
    const share = count === 1 ? 1 : (radius(i + 1) - radius(i)) / (endM - startM)
    addSlice(cursor, lengthM * share, radius(i), radius(i + 1))
  }
}

/** With X the distance to the point beyond the rim, equal shares of X^(1/3) make the slices' errors equal. */
function cutBell(lengthM: number, startM: number, endM: number, flare: number, cursor: Cursor): void {
  const mouthM = lengthM / ((endM / startM) ** (1 / flare) - 1)
  if (lengthM === 0 || !Number.isFinite(mouthM)) {
    cutCone(lengthM, startM, endM, cursor)
    return
  }
  const from = Math.cbrt(mouthM + lengthM)
  const to = Math.cbrt(mouthM)
  const curvature = flare * (flare + 1) + lossShare * flare * flare
  const monitor = 3 * (from - to) * Math.cbrt(curvature * cursor.waveNumber)
  const count = slicesFor(monitor, cursor)
  const distance = (i: number) =>
    i === 0 ? mouthM + lengthM : i === count ? mouthM : (from + ((to - from) * i) / count) ** 3
  const radius = (i: number) => (i === 0 ? startM : endM * (mouthM / distance(i)) ** flare)
  for (let i = 0; i < count; i++)
    addSlice(cursor, distance(i) - distance(i + 1), radius(i), i === count - 1 ? endM : radius(i + 1))
}
