/** A mouthpiece cup: a volume of air, without length. */
export interface CupSection {
  readonly kind: 'cup'
  readonly volumeMm3: number
}

/** A tube of one bore. */
export interface CylinderSection {
  readonly kind: 'cylinder'
  readonly lengthMm: number
  readonly diameterMm: number
}

/** A tube whose diameter changes evenly; it may widen, narrow or stay the same. */
export interface ConeSection {
  readonly kind: 'cone'
  readonly lengthMm: number
  readonly startDiameterMm: number
  readonly endDiameterMm: number
}

/** The place where the loops of a fingering are inserted. It has no length of its own. */
export interface ValvesSection {
  readonly kind: 'valves'
  readonly diameterMm: number
}

/** A widening bell, r = b·X^(−flare) with X the distance to a point beyond the rim. */
export interface BellSection {
  readonly kind: 'bell'
  readonly lengthMm: number
  readonly startDiameterMm: number
  readonly endDiameterMm: number
  readonly flare: number
}

/** A measured bore: points of distance and diameter, mm, with straight lines between them. */
export interface ProfileSection {
  readonly kind: 'profile'
  readonly points: readonly (readonly [xMm: number, diameterMm: number])[]
}

/** One piece of a bore, listed from the lips to the bell. */
export type BoreSection =
  | CupSection
  | CylinderSection
  | ConeSection
  | ValvesSection
  | BellSection
  | ProfileSection

/** A loop as the bore sees it: a cylinder put in at the valves. */
export interface Insert {
  readonly lengthMm: number
  readonly diameterMm: number
  /**
   * Centre-line radius of the bow, mm. When given, π times it of the length counts as bent: less inertance, same
   * compliance. Without it the loop counts as straight.
   */
  readonly bendRadiusMm?: number
}

/** Shape of the wave fronts in tapering pieces. */
export type WaveFronts = 'plane' | 'spherical'

/** What the end of the bore radiates into; `open` is the textbook's pressure zero. */
export type BoreMouth = 'unflanged' | 'open'

/** Losses at the wall: `exact` after Zwikker and Kosten, `wideTube` Keefe's series, `none` for textbook cases. */
export type WallLosses = 'exact' | 'wideTube' | 'none'

/** How a bore is reckoned. */
export interface BoreConditions {
  /** Spherical when absent, which measured bells favour. */
  readonly waveFronts?: WaveFronts
  /** Unflanged when absent. */
  readonly mouth?: BoreMouth
  /** Exact when absent: it costs no more than the series and holds in narrow throats too. */
  readonly losses?: WallLosses
  /** Mean of the air column, or its temperature at the lips when `bellTemperatureC` is given. */
  readonly temperatureC: number
  /** Temperature at the bell's rim; a straight line along the bore from the lips. */
  readonly bellTemperatureC?: number
}
