import type { BenchPitchChangeRecord } from '#shared/workbook/benchRecord.ts'
import { jobsOf } from '#shared/workbook/commands/benchCommands.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { inTableOrder } from '../inTableOrder.ts'

/** Errors of a change of pitch if only the body is changed, in the order of its design's table. */
export function errorsInOrder(
  workbook: Workbook,
  place: number,
  { ifOnlyBodyErrorsCents }: BenchPitchChangeRecord,
): readonly (readonly [string, number])[] {
  const job = jobsOf(workbook, 'pitchChanges')[place]
  const design = workbook.designs.find(({ id }) => id === job?.design)
  return design === undefined ? [] : inTableOrder(design, ifOnlyBodyErrorsCents)
}
