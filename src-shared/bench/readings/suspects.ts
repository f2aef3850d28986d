import { type ReadingsJob, usualReadingErrorCents } from './reading.ts'
import type { BareFit } from './readingsFit.ts'

/** A reading that the others speak against. */
export interface Suspect {
  /** Index among all readings. */
  readonly row: number
  /** What the fit to the others alone gives for it. */
  readonly expectedCents: number
}

/** From how many standard errors on a reading is far off. */
const farFrom = 4
/** Suspicions within this share of the strongest are as strong. */
const asStrong = 0.98

/**
 * Readings that lie far from where the others put them: each is judged by its residual as if it had been left out
 * of the fit (Cook and Weisberg, Residuals and Influence in Regression, on deleted residuals), against the stated
 * error or what the others scatter by, whichever is more. One when it can be named, several when the readings
 * disagree but none stands out, none when all is well. `leverages` belong to the used readings, in their order.
 *
 * @example suspects(job, fit, leverages) // [{ row: 6, expectedCents: 3.1 }]
 */
export function suspects(job: ReadingsJob, fit: BareFit, leverages: readonly number[]): readonly Suspect[] {
  const rows = [...job.readings.keys()].filter((row) => !job.readings[row]!.leaveOut)
  const squares = rows.reduce((sum, row) => sum + fit.residualsCents[row]! ** 2, 0)
  const stated = job.readingErrorCents ?? usualReadingErrorCents
  const judged = rows.flatMap((row, used) => {
    const free = 1 - leverages[used]!
    // A reading that alone settles something leaves no residual to judge.
    if (free < 1e-6) return []
    const residual = fit.residualsCents[row]!
    const others =
      fit.degreesOfFreedom > 1 ? (squares - residual ** 2 / free) / (fit.degreesOfFreedom - 1) : 0
    const error = Math.max(stated, Math.sqrt(Math.max(0, others)))
    const deletedCents = residual / free
    const strength = Math.abs(deletedCents) / (error / Math.sqrt(free))
    return [{ row, strength, expectedCents: job.readings[row]!.cents - deletedCents }]
  })
  const strongest = Math.max(0, ...judged.map(({ strength }) => strength))
  if (strongest < farFrom) return []
  return judged
    .filter(({ strength }) => strength >= asStrong * strongest)
    .map(({ row, expectedCents }) => ({ row, expectedCents }))
}
