import { type Reading, type ReadingsJob, usualReadingErrorCents } from './reading.ts'
import { harmonicFromTemperedCents } from './target.ts'
import { predictedCents } from './unknowns.ts'

/** What readings are off by alike. */
export interface SharedShift {
  /** Their median, cents; sharp positive. */
  readonly cents: number
  /** Indices, among all readings, of those that share it. */
  readonly rows: readonly number[]
  /** Whether all that are in the fit share it. */
  readonly isEvery: boolean
  /** What it is counted from: the notes as the tuner has them, the pure harmonics, or the design’s own errors. */
  readonly against: 'tuner' | 'harmonics' | 'design'
}

/** Readings off by less than this all alike are the day's weather, cents. */
const alikeFromCents = 8
/** One reading in so many may be a slip. */
const oneSlipIn = 6

/**
 * A shift common to the readings, or `null`: as the tuner shows them, against the pure harmonics, or against what
 * the design itself would do, so that a table of combinations which are sharp by design is seen through too. They
 * share a shift when they lie within two errors of a reading about their median. One in six may be a slip, but not
 * one of the open instrument: what leaves that in tune is no leak.
 *
 * @example sharedShift(job)?.cents // -25
 */
export function sharedShift(job: ReadingsJob): SharedShift | null {
  const used = job.readings.flatMap((reading, row) => (reading.leaveOut ? [] : [{ reading, row }]))
  if (used.length < 2) return null
  const limitCents = 2 * (job.readingErrorCents ?? usualReadingErrorCents)
  const norms: readonly (readonly [SharedShift['against'], (reading: Reading) => number])[] = [
    ['tuner', () => 0],
    ['harmonics', ({ harmonic }) => harmonicFromTemperedCents(harmonic)],
    ['design', (reading) => predictedCents(job, [], [], reading)],
  ]
  const shifts = norms.flatMap(([against, normCents]) => {
    const off = used.map((each) => ({ ...each, cents: each.reading.cents - normCents(each.reading) }))
    const cents = median(off.map((each) => each.cents))
    const away = off.map((each) => Math.abs(each.cents - cents))
    const sharing = off.filter((_, i) => away[i]! <= limitCents)
    const slips = off.filter((each) => !sharing.includes(each))
    const isShared =
      slips.length <= used.length / oneSlipIn && slips.every(({ reading }) => reading.pressed.length > 0)
    if (!isShared || Math.abs(cents) < Math.max(alikeFromCents, limitCents)) return []
    const shift = { cents, rows: sharing.map(({ row }) => row), isEvery: slips.length === 0, against }
    return [{ shift, spread: median(away) }]
  })
  return shifts.sort((a, b) => a.spread - b.spread)[0]?.shift ?? null
}

/** The middle of some values, at least one; of an even number, halfway between the two. */
function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length / 2
  return (sorted[Math.ceil(middle) - 1]! + sorted[Math.floor(middle)]!) / 2
}
