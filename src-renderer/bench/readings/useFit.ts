import { useMemo } from 'react'
import { fitReadings, type RefusedReadings } from '#shared/bench/readings/fitReadings.ts'
import type { ReadingsFit } from '#shared/bench/readings/readingsFit.ts'
import type { BenchReadings } from '#shared/workbook/bench.ts'
import { readingsJobOf } from '#shared/workbook/benchJobs.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'

/** A table of readings, found and fitted. */
export interface ReadingsWork {
  readonly placed: ReturnType<typeof readingsJobOf>
  /** `null` when its design is not there, or it has no readings yet. */
  readonly fit: ReadingsFit | RefusedReadings | null
}

/** Fits a table of readings; anew only when it or the workbook changes. */
export function useFit(workbook: Workbook, readings: BenchReadings): ReadingsWork {
  return useMemo(() => {
    const placed = readingsJobOf(workbook, readings)
    const used = readings.rows.some(({ leaveOut }) => leaveOut !== true)
    return { placed, fit: placed.kind === 'placed' && used ? fitReadings(placed.job) : null }
  }, [workbook, readings])
}
