import type { Body } from './body.ts'
import { findPeaks } from './findPeaks.ts'
import type { Peak } from './refinePeak.ts'
import { accepted, type BoreResult } from './refusal.ts'
import { routeThrough } from './routeThrough.ts'
import type { Insert } from './section.ts'

/**
 * Whether the modes asked for were found: `complete`; `fewer` when |Z| has no more maxima up to the body's
 * `highestHz` (above a bell's cut-off there are none); `none` when it has not even one.
 */
export type ResonanceStatus = 'complete' | 'fewer' | 'none'

/** The resonances of one fingering, lowest first: mode n is `peaks[n - 1]`. */
export interface Resonances {
  readonly status: ResonanceStatus
  readonly peaks: readonly Peak[]
}

/**
 * Maxima of the input impedance's magnitude with these loops in, to 0.01 Hz, as many as the body's `highestMode`.
 *
 * @example resonancesOf(body, [{ lengthMm: 82.3, diameterMm: 11.66 }])
 */
export function resonancesOf(body: Body, inserts: readonly Insert[]): BoreResult<Resonances> {
  const route = routeThrough(body, inserts)
  if (!route.ok) return route
  const peaks = findPeaks(route.value, body.highestMode)
  const status = peaks.length === 0 ? 'none' : peaks.length < body.highestMode ? 'fewer' : 'complete'
  return accepted({ status, peaks })
}
