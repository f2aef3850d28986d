/**
 * A bow between two parallel legs. Without `quarterRadiiMm` it is half a circle of radius `legSpacingMm / 2`;
 * with them it is two quarter circles of those centre-line radii and a straight piece across between them; the
 * tighter quarter starts farther out, on a straight as long as the difference.
 */
export interface Bow {
  /** Distance between the legs' centre lines, mm. */
  readonly legSpacingMm: number
  readonly quarterRadiiMm?: readonly [number, number]
}

/** The two quarters' centre-line radii, mm; equal for half a circle. */
export function quarterRadiiMm(bow: Bow): readonly [number, number] {
  return bow.quarterRadiiMm ?? [bow.legSpacingMm / 2, bow.legSpacingMm / 2]
}

/**
 * The straight piece across between the quarters, mm. Negative when the quarters need wider legs.
 *
 * @example acrossMm({ legSpacingMm: 50, quarterRadiiMm: [19, 19] }) // 12
 */
export function acrossMm(bow: Bow): number {
  const [first, second] = quarterRadiiMm(bow)
  return bow.legSpacingMm - first - second
}

/** The straight before the tighter quarter, mm; 0 when the radii are equal. */
export function reachMm(bow: Bow): number {
  const [first, second] = quarterRadiiMm(bow)
  return Math.abs(first - second)
}

/**
 * Tube along the centre line of a bow, mm, without straight ends: πR for half a circle of radius R.
 *
 * @example bowTubeMm({ legSpacingMm: 38 }) // 59.69
 */
export function bowTubeMm(bow: Bow): number {
  const [first, second] = quarterRadiiMm(bow)
  return (Math.PI / 2) * (first + second) + acrossMm(bow) + reachMm(bow)
}

/**
 * What a bend's centre line is multiplied by to get its mean acoustic length: the square root of
 * `(1 + sqrt(1 − (a/R)²)) / 2`, a the bore's radius and R the centre line's, both mm. The bend's inertance is
 * lower than a straight tube's and its compliance the same (Nederveen, Acoustical Aspects of Woodwind
 * Instruments, on bends). A bend tighter than its bore (R below a) is taken as R = a.
 *
 * @example bendFactor(8.6, 19) // 0.9725
 */
export function bendFactor(boreRadiusMm: number, centreRadiusMm: number): number {
  const tightness = Math.min(1, boreRadiusMm / centreRadiusMm)
  return Math.sqrt((1 + Math.sqrt(1 - tightness ** 2)) / 2)
}

/**
 * Mean acoustic length of a bow, mm: each quarter by {@link bendFactor}, what is straight as it is.
 *
 * @example bowAcousticMm({ legSpacingMm: 38 }, 17.2) // 58.05
 */
export function bowAcousticMm(bow: Bow, boreDiameterMm: number): number {
  const bends = quarterRadiiMm(bow).map((radiusMm) =>
    radiusMm > 0 ? (Math.PI / 2) * radiusMm * bendFactor(boreDiameterMm / 2, radiusMm) : 0,
  )
  return bends.reduce((sum, bendMm) => sum + bendMm, acrossMm(bow) + reachMm(bow))
}
