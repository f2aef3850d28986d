import { centsBetween } from '../pitch/cents.ts'
import type { Peak } from './refinePeak.ts'

/** One numbered resonance. */
export interface Mode extends Peak {
  /** 1 for the lowest maximum, and so on. Where peaks have no width any more it is no more than a count. */
  readonly mode: number
  /** The peak's frequency over its number. */
  readonly equivalentFundamentalHz: number
  /** The equivalent fundamental against the nominal one, cents; `null` without a nominal one. */
  readonly equivalentFundamentalCents: number | null
}

/** The modes of one fingering and the fundamental they have in common. */
export interface NumberedModes {
  /** Fundamental that suits modes 2 and up best; `null` with fewer than two modes. */
  readonly nominalFundamentalHz: number | null
  readonly modes: readonly Mode[]
}

/**
 * Numbers resonances from the lowest up, and fits the nominal fundamental: the mean of log(f_n/n) over modes 2 and up
 * that stand out by half their power (all of modes 2 and up when none does). Mode 1 is left out because in a bore with
 * much cylinder it lies far below the pedal.
 *
 * @example numberModes(resonances.peaks).nominalFundamentalHz
 */
export function numberModes(peaks: readonly Peak[]): NumberedModes {
  const nominalFundamentalHz = nominalFundamental(peaks)
  const modes = peaks.map((peak, i) => {
    const equivalentFundamentalHz = peak.hz / (i + 1)
    const equivalentFundamentalCents =
      nominalFundamentalHz === null ? null : centsBetween(nominalFundamentalHz, equivalentFundamentalHz)
    return { ...peak, mode: i + 1, equivalentFundamentalHz, equivalentFundamentalCents }
  })
  return { nominalFundamentalHz, modes }
}

function nominalFundamental(peaks: readonly Peak[]): number | null {
  const equivalent = peaks
    .map(({ hz, widthHz }, i) => ({ hz: hz / (i + 1), standsOut: widthHz !== null }))
    .slice(1)
  if (equivalent.length === 0) return null
  const standing = equivalent.filter(({ standsOut }) => standsOut)
  const fitted = standing.length > 0 ? standing : equivalent
  return Math.exp(fitted.reduce((sum, { hz }) => sum + Math.log(hz), 0) / fitted.length)
}
