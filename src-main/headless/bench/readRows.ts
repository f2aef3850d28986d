import { fingeringName, nameInValveOrder } from '#shared/valves/fingering.ts'
import type { BenchReading } from '#shared/workbook/bench.ts'
import { jobsOf } from '#shared/workbook/commands/benchCommands.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'

/** A row of a readings job, its fingering named in its design's valve order. */
export interface NamedReading extends BenchReading {
  readonly fingering: string
}

/** The rows of the readings job at a place of the workbook, as typed; none when there is no such job. */
export function readRows(workbook: Workbook, place: number): readonly NamedReading[] {
  const job = jobsOf(workbook, 'readings')[place]
  const design = workbook.designs.find(({ id }) => id === job?.design)
  const order = design?.valves.map(({ id }) => id) ?? []
  return (job?.rows ?? []).map((row) => ({
    ...row,
    fingering: nameInValveOrder(fingeringName(row.pressed), order),
  }))
}
