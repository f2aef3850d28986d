import type { BenchReading } from '../bench.ts'
import { withJob } from './benchCommands.ts'
import { type Command, coalesced, recorded } from './command.ts'

/** Adds readings behind the others: one typed, or many pasted. */
export function addReadings(id: string, readings: readonly BenchReading[]): Command {
  const name = readings.length === 1 ? 'Add reading' : `Paste ${readings.length} readings`
  return recorded(name, (workbook) =>
    withJob(workbook, 'readings', id, (job) => ({ ...job, rows: [...job.rows, ...readings] })),
  )
}

/** Puts other readings in place of all. */
export function replaceReadings(id: string, readings: readonly BenchReading[]): Command {
  return recorded('Replace readings', (workbook) =>
    withJob(workbook, 'readings', id, (job) => ({ ...job, rows: readings })),
  )
}

/** Changes one reading; rows are counted from 0. */
export function setReading(id: string, row: number, change: Partial<BenchReading>): Command {
  const fields = Object.keys(change).join(' ')
  return coalesced(`Reading ${row + 1}`, `bench reading ${id} ${row} ${fields}`, (workbook) =>
    withJob(workbook, 'readings', id, (job) => ({
      ...job,
      rows: job.rows.map((reading, i) => (i === row ? { ...reading, ...change } : reading)),
    })),
  )
}

/** Leaves a reading out of the fit, or takes it in again. */
export function leaveOutReading(id: string, row: number, leaveOut: boolean): Command {
  return recorded(leaveOut ? 'Leave reading out' : 'Take reading in', (workbook) =>
    withJob(workbook, 'readings', id, (job) => ({
      ...job,
      rows: job.rows.map((reading, i) => (i === row ? withLeaveOut(reading, leaveOut) : reading)),
    })),
  )
}

function withLeaveOut(reading: BenchReading, leaveOut: boolean): BenchReading {
  const { leaveOut: _before, ...rest } = reading
  return leaveOut ? { ...rest, leaveOut } : rest
}

/** Takes a reading out of the table. */
export function removeReading(id: string, row: number): Command {
  return recorded('Delete reading', (workbook) =>
    withJob(workbook, 'readings', id, (job) => ({ ...job, rows: job.rows.filter((_, i) => i !== row) })),
  )
}
