import type { BenchPitchChangeRecord } from '#shared/workbook/benchRecord.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { inTableOrder } from '../inTableOrder.ts'
import { jobAt } from './jobAt.ts'

/** Errors of a change of pitch if only the body is changed, in the order of its design's table. */
export function errorsInOrder(
  workbook: Workbook,
  place: number,
  { ifOnlyBodyErrorsCents }: BenchPitchChangeRecord,
): readonly (readonly [string, number])[] {
  const { design } = jobAt(workbook, 'pitchChanges', place)
  return design === undefined ? [] : inTableOrder(design, ifOnlyBodyErrorsCents)
}
