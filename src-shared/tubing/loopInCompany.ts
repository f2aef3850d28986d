import { loopForDropMm, requiredLengthMm, routeErrorCents } from './requiredLength.ts'

/** What one loop has to give when the instrument is already lowered, against what it gives. */
export interface LoopInCompany {
  /** How far the instrument is lowered before the loop is added, semitones. */
  readonly loweredSemitones: number
  /** Tube that the loop's own drop needs there, mm. */
  readonly neededMm: number
  /** Tube that is missing there, mm; negative when the loop is too long. */
  readonly missingMm: number
  /** Error of the lowered instrument with the loop added, cents, sharp positive. */
  readonly errorCents: number
}

/**
 * One loop in the company of every drop from 0 to `mostSemitones`. A lowered instrument is a longer one, so the
 * same interval needs `2^(j/12)` times as much tube after j semitones, while the loop stays as long as it is.
 *
 * @param openMm effective open length, mm
 * @param loopMm tube of the loop, mm
 * @param semitones drop that the loop is meant for
 * @example loopsInCompany(2000, 378.41, 3, 2).map(({ missingMm }) => missingMm) // [0, 22.5, 46.3]
 */
export function loopsInCompany(
  openMm: number,
  loopMm: number,
  semitones: number,
  mostSemitones: number,
): readonly LoopInCompany[] {
  return Array.from({ length: mostSemitones + 1 }, (_, loweredSemitones) => {
    const loweredMm = requiredLengthMm(openMm, loweredSemitones)
    const neededMm = loopForDropMm(loweredMm, semitones)
    return {
      loweredSemitones,
      neededMm,
      missingMm: neededMm - loopMm,
      errorCents: routeErrorCents(loweredMm + neededMm, loweredMm + loopMm),
    }
  })
}
