/**
 * Effective length of the open instrument, mm: `L = c / (2·f1)`.
 *
 * @param speedOfSoundMps speed of sound in the air column, m/s, above 0
 * @param fundamentalHz nominal harmonic 1 of the open route, Hz, above 0
 * @example openLengthMm(345, 57.5) // 3000
 */
export function openLengthMm(speedOfSoundMps: number, fundamentalHz: number): number {
  return (speedOfSoundMps * 1000) / (2 * fundamentalHz)
}

/**
 * Nominal fundamental, Hz, of an effective open length in mm: `openLengthMm` the other way round.
 *
 * @example fundamentalHz(345, 3000) // 57.5
 */
export function fundamentalHz(speedOfSoundMps: number, lengthMm: number): number {
  return (speedOfSoundMps * 1000) / (2 * lengthMm)
}

/**
 * What mouthpiece and bell add to the physical centre line, mm: effective length less bore length. Usually
 * positive and below a tenth of the effective length; outside that, length and pitch may not belong together.
 *
 * @example endCorrectionMm(3950, 3790) // 160
 */
export function endCorrectionMm(effectiveLengthMm: number, boreLengthMm: number): number {
  return effectiveLengthMm - boreLengthMm
}
