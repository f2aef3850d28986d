import type { Finding } from '../finding.ts'
import { fittedLoops } from './fittedLoops.ts'
import { checkReadings, type Estimate, type ReadingsJob, usualReadingErrorCents } from './reading.ts'
import type { ReadingsFit } from './readingsFit.ts'
import { readingRemarks } from './remarks.ts'
import { isSettled, notToldApart } from './settled.ts'
import { type SolvedReadings, solveReadings } from './solveReadings.ts'
import {
  knownOffsetCents,
  predictedCents,
  referenceHarmonic,
  type Unknown,
  unknownsOf,
  usedReadings,
} from './unknowns.ts'

/** Readings with values that cannot be worked with. */
export interface RefusedReadings {
  readonly kind: 'refused'
  readonly findings: readonly Finding[]
}

/**
 * Finds lengths from a tuner's readings: least squares on `cents = 1200·log2(n·c/(2·route)/target) + h_n` for the
 * loops, the open length and the harmonics' offsets, with standard errors. What the readings cannot tell apart is
 * named and given no value. Values that are no readings are refused.
 *
 * @example fitReadings(job) // { kind: 'fitted', loops: { L3: { value: 259.1, standardError: 2.9, … } }, … }
 */
export function fitReadings(job: ReadingsJob): ReadingsFit | RefusedReadings {
  const findings = checkReadings(job)
  if (findings.length > 0) return { kind: 'refused', findings }
  const unknowns = unknownsOf(job)
  const solved = solveReadings(job, unknowns)
  const fittedCents = job.readings.map((reading) => predictedCents(job, unknowns, solved.values, reading))
  const residualsCents = job.readings.map((reading, i) => reading.cents - fittedCents[i]!)
  const degreesOfFreedom = usedReadings(job).length - solved.linear.rank
  const readingErrorCents = errorOfOneReading(job, residualsCents, degreesOfFreedom)
  const estimate = estimator(unknowns, solved, readingErrorCents)
  const fit = {
    kind: 'fitted',
    converged: solved.converged,
    openLengthMm: job.openHeld
      ? { value: job.openLengthMm, standardError: 0 }
      : estimate(unknowns.findIndex(({ kind }) => kind === 'open')),
    loops: fittedLoops(job, unknowns, solved, readingErrorCents),
    harmonicOffsetsCents: fittedOffsets(job, unknowns, estimate),
    referenceHarmonic: referenceHarmonic(job),
    residualsCents,
    fittedCents,
    notToldApart: notToldApart(unknowns, solved),
    readingErrorCents,
    degreesOfFreedom,
  } as const
  return { ...fit, remarks: readingRemarks(job, fit, solved.leverages) }
}

/** The stated error, widened when the residuals show more than that. */
function errorOfOneReading(job: ReadingsJob, residualsCents: readonly number[], freedom: number): number {
  const stated = job.readingErrorCents ?? usualReadingErrorCents
  if (freedom <= 0) return stated
  const used = residualsCents.filter((_, i) => !job.readings[i]!.leaveOut)
  return Math.max(stated, Math.hypot(...used) / Math.sqrt(freedom))
}

/** Reads off the unknown at an index, or `null` when it is not settled. */
function estimator(unknowns: readonly Unknown[], solved: SolvedReadings, errorCents: number) {
  return (at: number): Estimate | null => {
    if (unknowns[at] === undefined || !isSettled(solved, at)) return null
    const standardError = errorCents * Math.sqrt(Math.max(0, solved.linear.covariance[at]![at]!))
    return { value: solved.values[at]!, standardError }
  }
}

function fittedOffsets(
  job: ReadingsJob,
  unknowns: readonly Unknown[],
  estimate: (at: number) => Estimate | null,
): Record<string, Estimate> {
  const harmonics = [...new Set(usedReadings(job).map(({ harmonic }) => harmonic))].sort((a, b) => a - b)
  const offsets = harmonics.flatMap((harmonic) => {
    const at = unknowns.findIndex((unknown) => unknown.kind === 'harmonic' && unknown.harmonic === harmonic)
    const given = { value: knownOffsetCents(job, harmonic), standardError: 0 }
    const value = at < 0 ? given : estimate(at)
    return value === null ? [] : [[String(harmonic), value] as const]
  })
  return Object.fromEntries(offsets)
}
