import { fingeringName } from '../../valves/fingering.ts'
import { loopNamed } from '../../valves/loop.ts'
import { benchFigure, centsText } from '../figures.ts'
import type { Reading, ReadingsJob } from './reading.ts'
import type { BareFit, Remark } from './readingsFit.ts'
import { sharedShift } from './sharedShift.ts'
import { suspects } from './suspects.ts'

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
    ...lengths(job, fit),
    ...unchecked(fit),
    ...reference(job, fit),
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

const againstWords = {
  tuner: '',
  harmonics: ' counted from the pure harmonics',
  design: ' counted from what the design itself would give',
} as const

/** A shift common to the readings is no length before it is a leak, the main slide or the player. */
function alike(job: ReadingsJob): readonly Remark[] {
  const shift = sharedShift(job)
  if (shift === null) return []
  const causes =
    shift.cents < 0 ? 'a leak, the main slide or a low player' : 'the main slide, warm air or a high player'
  const message = `${shift.isEvery ? 'Every' : 'Nearly every'} reading is off alike, about ${centsText(shift.cents)}${againstWords[shift.against]}. Look for ${causes} before you cut any loop.`
  return [remark('alike', message, shift.rows)]
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
  const message = `Reading ${only.row + 1} (${names[0]}) is far off: the others put it at ${centsText(only.expectedCents)}, it says ${centsText(job.readings[only.row]!.cents)}. Read it again or leave it out.`
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

function lengths(job: ReadingsJob, { loops }: BareFit): readonly Remark[] {
  return Object.entries(loops).flatMap(([id, loop]) => {
    const name = loopNamed(job.loops, id)
    if (loop.value < 0)
      return [
        remark(
          'negativeLength',
          `Loop ${name} comes out at ${benchFigure(loop.value)} mm. Is a fingering or a harmonic mistyped?`,
        ),
      ]
    const { changeMm, changeStandardErrorMm } = loop
    if (changeMm === null || changeStandardErrorMm === null || Math.abs(changeMm) > 2 * changeStandardErrorMm)
      return []
    const message = `Loop ${name} asks for ${benchFigure(changeMm)} ± ${benchFigure(changeStandardErrorMm)} mm of tube, which may be nothing. Take more readings before you cut.`
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

function reference({ openHeld }: ReadingsJob, { referenceHarmonic }: BareFit): readonly Remark[] {
  if (referenceHarmonic === null) return []
  const message = openHeld
    ? `The offset of harmonic ${referenceHarmonic} is taken as given; those of the others are counted from there.`
    : `The open length is as harmonic ${referenceHarmonic} has it; offsets of the others are counted from there.`
  return [remark('reference', message)]
}

function readingName({ pressed, harmonic }: Reading): string {
  return `${fingeringName(pressed)} on harmonic ${harmonic}`
}
