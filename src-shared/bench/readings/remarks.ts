import { fingeringName } from '../../valves/fingering.ts'
import { benchFigure, signedCents } from '../figures.ts'
import { type Reading, type ReadingsJob, usualReadingErrorCents } from './reading.ts'
import type { BareFit, Remark } from './readingsFit.ts'
import { suspects } from './suspects.ts'
import { harmonicFromTemperedCents } from './target.ts'

/** Readings off by less than this all alike are the day's weather, cents. */
const alikeFromCents = 8

/**
 * Remarks on a fit, the most urgent first. `leverages` belong to the readings that were used, in their order.
 *
 * @example readingRemarks(job, fit, leverages)[0]?.kind // 'alike'
 */
export function readingRemarks(
  job: ReadingsJob,
  fit: BareFit,
  leverages: readonly number[],
): readonly Remark[] {
  return [
    ...convergence(fit),
    ...alike(job),
    ...doubtful(job, fit, leverages),
    ...apart(fit),
    ...lengths(fit),
    ...unchecked(fit),
    ...reference(fit),
  ]
}

function remark(kind: Remark['kind'], message: string, rows: readonly number[] = []): Remark {
  return { kind, rows, message }
}

function convergence({ converged }: BareFit): readonly Remark[] {
  if (converged) return []
  return [
    remark('notConverged', 'The lengths did not settle: some reading cannot belong to this instrument.'),
  ]
}

/** A shift common to all readings, whether typed as the tuner shows it or against the pure harmonics. */
function alike(job: ReadingsJob): readonly Remark[] {
  const used = job.readings.flatMap((reading, row) => (reading.leaveOut ? [] : [{ reading, row }]))
  if (used.length < 2) return []
  const error = job.readingErrorCents ?? usualReadingErrorCents
  const raw = used.map(({ reading }) => reading.cents)
  const pure = used.map(({ reading }) => reading.cents - harmonicFromTemperedCents(reading.harmonic))
  const shifts = [raw, pure].map(commonShift).filter(({ spread }) => spread <= 1.5 * error)
  const [shift] = shifts.sort((a, b) => a.spread - b.spread)
  if (shift === undefined || Math.abs(shift.mean) < Math.max(alikeFromCents, 2 * error)) return []
  const causes =
    shift.mean < 0 ? 'a leak, the main slide or a low player' : 'the main slide, warm air or a high player'
  const message = `Every reading is off alike, about ${signedCents(shift.mean)}. Look for ${causes} before you cut any loop.`
  return [
    remark(
      'alike',
      message,
      used.map(({ row }) => row),
    ),
  ]
}

function commonShift(cents: readonly number[]): { readonly mean: number; readonly spread: number } {
  const mean = cents.reduce((sum, value) => sum + value, 0) / cents.length
  return { mean, spread: Math.max(...cents.map((value) => Math.abs(value - mean))) }
}

function doubtful(job: ReadingsJob, fit: BareFit, leverages: readonly number[]): readonly Remark[] {
  const found = suspects(job, fit, leverages)
  const [only] = found
  if (only === undefined) return []
  const rows = found.map(({ row }) => row)
  const names = rows.map((row) => readingName(job.readings[row]!))
  if (found.length > 1)
    return [
      remark(
        'disagree',
        `These readings do not agree, and nothing tells which is wrong: ${names.join('; ')}. Read them again.`,
        rows,
      ),
    ]
  const message = `Reading ${only.row + 1} (${names[0]}) is far off: the others put it at ${signedCents(only.expectedCents)}, it says ${signedCents(job.readings[only.row]!.cents)}. Read it again or leave it out.`
  return [remark('farOff', message, rows)]
}

function apart({ notToldApart }: BareFit): readonly Remark[] {
  return notToldApart.map((names) => {
    const advice = names.some((name) => name.startsWith('harmonic'))
      ? 'Read the same harmonic open and with each fingering, or take the harmonics’ offsets as given.'
      : 'Read the open instrument and each of these valves alone.'
    return remark('notToldApart', `The readings cannot tell ${names.join(' from ')}. ${advice}`)
  })
}

function lengths({ loops }: BareFit): readonly Remark[] {
  return Object.entries(loops).flatMap(([id, loop]) => {
    if (loop.value < 0)
      return [
        remark(
          'negativeLength',
          `Loop ${id} comes out at ${benchFigure(loop.value)} mm. Is a fingering or a harmonic mistyped?`,
        ),
      ]
    const { changeMm, changeStandardErrorMm } = loop
    if (changeMm === null || changeStandardErrorMm === null || Math.abs(changeMm) > 2 * changeStandardErrorMm)
      return []
    const message = `Loop ${id} asks for ${benchFigure(changeMm)} ± ${benchFigure(changeStandardErrorMm)} mm of tube, which may be nothing. Take more readings before you cut.`
    return [remark('withinDoubt', message)]
  })
}

function unchecked({ degreesOfFreedom }: BareFit): readonly Remark[] {
  if (degreesOfFreedom > 0) return []
  return [
    remark(
      'unchecked',
      'There are no more readings than lengths to find, so nothing checks them. The doubt shown comes from the error stated for one reading.',
    ),
  ]
}

function reference({ referenceHarmonic }: BareFit): readonly Remark[] {
  const message = `The open length is as harmonic ${referenceHarmonic} has it; offsets of the others are counted from there.`
  return [remark('reference', message)]
}

function readingName({ pressed, harmonic }: Reading): string {
  return `${fingeringName(pressed)} on harmonic ${harmonic}`
}
