import type { BenchList, BenchLists } from '#shared/workbook/bench.ts'
import { jobsOf } from '#shared/workbook/commands/benchCommands.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'

/** A job of the bench by its place in its list, and its design; either may not be there. */
export function jobAt<List extends BenchList>(
  workbook: Workbook,
  list: List,
  place: number,
): { readonly job: BenchLists[List] | undefined; readonly design: Design | undefined } {
  const job = jobsOf(workbook, list)[place]
  return { job, design: workbook.designs.find(({ id }) => id === job?.design) }
}
