import type { Finding } from '../../bench/finding.ts'
import type { Reading } from '../../bench/readings/reading.ts'
import { allEqualSlip, readingSlip } from '../../bench/slips/pitchSlips.ts'
import { slideSlips } from '../../bench/slips/slideSlips.ts'
import { pitchChangeOf, readingsJobOf, slideJobOf, type Unplaced } from '../benchJobs.ts'
import { jobsOf } from '../commands/benchCommands.ts'
import type { Workbook } from '../workbook.ts'
import type { Warning } from './warning.ts'

/**
 * What looks like a slip in the bench part: parts of a slide that no instrument has, and jobs that name a design,
 * a loop or a valve which is not in the workbook.
 *
 * @example benchWarnings(workbook)[0]?.path // 'bench.slides[0].loop'
 */
export function benchWarnings(workbook: Workbook): readonly Warning[] {
  return [
    ...jobsOf(workbook, 'slides').flatMap((slide, i) => {
      const at = `bench.slides[${i}]`
      const placed = slideJobOf(workbook, slide)
      if (placed.kind === 'unplaced') return [unplacedWarning(at, placed)]
      return slideSlips(at, placed.job).map(warningOf)
    }),
    ...jobsOf(workbook, 'readings').flatMap((readings, i) => {
      const at = `bench.readings[${i}]`
      const placed = readingsJobOf(workbook, readings)
      if (placed.kind === 'unplaced') return [unplacedWarning(at, placed)]
      const known = placed.design.valves.map(({ id }) => id)
      return [
        ...readings.rows.flatMap(({ pressed }, row) =>
          strangerWarnings(`${at}.rows[${row}].pressed`, pressed, known),
        ),
        ...readingSlips(at, placed.job.readings),
      ]
    }),
    ...jobsOf(workbook, 'pitchChanges').flatMap((change, i) => {
      const placed = pitchChangeOf(workbook, change)
      return placed.kind === 'unplaced' ? [unplacedWarning(`bench.pitchChanges[${i}]`, placed)] : []
    }),
  ]
}

function unplacedWarning(at: string, { field, found, expected, message }: Unplaced): Warning {
  return { path: `${at}.${field}`, found, expected, message }
}

function strangerWarnings(
  path: string,
  pressed: readonly string[],
  known: readonly string[],
): readonly Warning[] {
  const stranger = pressed.find((id) => !known.includes(id))
  if (stranger === undefined) return []
  const expected = known.length === 0 ? 'no valves: the design has none' : `valves of ${known.join(', ')}`
  return [
    { path, found: stranger, expected, message: `No valve is called “${stranger}”; expected ${expected}.` },
  ]
}

function readingSlips(at: string, readings: readonly Reading[]): readonly Warning[] {
  const used = readings.filter(({ leaveOut }) => leaveOut !== true)
  const findings = [
    ...readings.map(({ cents, targetHz }, row) => readingSlip(`${at}.rows[${row}].cents`, cents, targetHz)),
    allEqualSlip(
      `${at}.rows`,
      used.map(({ cents }) => cents),
    ),
  ]
  return findings.flatMap((finding) => (finding === null ? [] : [warningOf(finding)]))
}

function warningOf({ field, ...rest }: Finding): Warning {
  return { path: field, ...rest }
}
