/** A tone of a piece. */
export interface Tone {
  readonly startS: number
  /** From the first sample to the last, fades included. */
  readonly durationS: number
  readonly hz: number
  /** Its part of the whole level; tones that sound at once never add up to more than 1. */
  readonly share: number
  /** What it stands for, as the piece's maker numbered it. */
  readonly part: number
}

/** What is to sound, and how long it lasts in all. */
export interface Piece {
  readonly tones: readonly Tone[]
  readonly lengthS: number
}

/** How long a tone takes to come, s. */
export const fadeInS = 0.06
/** How long a tone takes to go, s. */
export const fadeOutS = 0.09

/** How long what sounds takes to fall silent when it is stopped, s. */
export const stopFadeS = 0.05

/**
 * A fade from 0 to 1 as a raised cosine, which begins and ends without a corner.
 *
 * @param points at least 2
 * @example fadeCurve(3) // [0, 0.5, 1]
 */
export function fadeCurve(points: number): readonly number[] {
  return Array.from({ length: points }, (_, i) => (1 - Math.cos((Math.PI * i) / (points - 1))) / 2)
}

/**
 * The most that the shares of a piece's tones add up to at any moment; a piece that keeps to the level limit has
 * at most 1.
 *
 * @example mostShare({ tones: [], lengthS: 0 }) // 0
 */
export function mostShare({ tones }: Piece): number {
  const sumAt = (atS: number): number =>
    tones
      .filter(({ startS, durationS }) => startS <= atS && atS < startS + durationS)
      .reduce((sum, { share }) => sum + share, 0)
  return tones.reduce((most, { startS }) => Math.max(most, sumAt(startS)), 0)
}

/**
 * The piece's tones that sound at a moment, by their parts.
 *
 * @example partsAt(comparison('together', 222, 220), 1) // [0, 1]
 */
export function partsAt({ tones }: Piece, atS: number): readonly number[] {
  return tones
    .filter(({ startS, durationS }) => startS <= atS && atS < startS + durationS)
    .map(({ part }) => part)
}
