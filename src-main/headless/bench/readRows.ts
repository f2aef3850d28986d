import { fingeringName, nameInValveOrder } from '#shared/valves/fingering.ts'
import type { BenchReading } from '#shared/workbook/bench.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { jobAt } from './jobAt.ts'

/** A row of a readings job, its fingering named in its design's valve order. */
export interface NamedReading extends BenchReading {
  readonly fingering: string
}

/** The rows of the readings job at a place of the workbook, as typed; none when there is no such job. */
export function readRows(workbook: Workbook, place: number): readonly NamedReading[] {
  const { job, design } = jobAt(workbook, 'readings', place)
  const order = design?.valves.map(({ id }) => id) ?? []
  return (job?.rows ?? []).map((row) => ({
    ...row,
    fingering: nameInValveOrder(fingeringName(row.pressed), order),
  }))
}
