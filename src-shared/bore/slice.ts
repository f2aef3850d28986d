/** A piece of a bore as it is reckoned: straight sides, SI units. `volumeM3` is set for a cup alone. */
export interface Slice {
  /** Distance of its middle from the lips, without loops. */
  readonly middleM: number
  readonly lengthM: number
  readonly startRadiusM: number
  readonly endRadiusM: number
  readonly volumeM3?: number
}

/** Slices a unit of the monitors below, before any halving. */
const slicesPerUnit = 5
/** A piece that needs no more than this share of a slice is left whole, so that a dense profile stays as it is. */
const leftWhole = 0.2
/** Straight sides are exact in shape; only the wall's losses change along a slice, by about this share. */
const lossShare = 0.02

/** How far a bore has been cut; moved along as slices are added. */
export interface Cursor {
  atM: number
  radiusM: number
  readonly slices: Slice[]
  /** How often every slice is halved. */
  readonly halvings: number
  /** 2π over the shortest wavelength of interest, 1/m. */
  readonly waveNumber: number
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

/**
 * Cuts a cone, or a cylinder, into slices behind the others: equal shares of r^(1/3) make their loss errors equal.
 *
 * @example cutCone(0.3, 0.006, 0.012, cursor)
 */
export function cutCone(lengthM: number, startM: number, endM: number, cursor: Cursor): void {
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

/**
 * Cuts a bell into slices behind the others: with X the distance to the point beyond the rim, equal shares of X^(1/3)
 * make their errors equal.
 *
 * @example cutBell(0.5, 0.006, 0.06, 0.7, cursor)
 */
export function cutBell(lengthM: number, startM: number, endM: number, flare: number, cursor: Cursor): void {
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
