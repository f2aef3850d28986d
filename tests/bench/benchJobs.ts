import type { Bench } from '#shared/workbook/bench.ts'
import { benchRecord } from '#shared/workbook/benchRecord.ts'
import { benchWorkbook, oneOfEach } from '../fixtures/benchWorkbook.ts'
import { type Figure, medianMs } from './figure.ts'

const runs = 50

/** One job of each kind on the bench, and a table of forty readings. */
export function measureBenchJobs(): readonly Figure[] {
  const rows = Array.from({ length: 40 }, (_, i) => ({
    pressed: [[], ['1'], ['2'], ['3'], ['1', '2'], ['1', '3'], ['2', '3'], ['1', '2', '3']][i % 8]!,
    harmonic: 2 + (i % 7),
    cents: ((i * 7) % 19) - 9,
  }))
  const readings = [{ ...oneOfEach.readings[0], rows }]
  const figure = (name: string, bench: Bench, target: number | null): Figure => {
    const workbook = benchWorkbook(bench)
    return { name, value: medianMs(runs, () => benchRecord(workbook)), unit: 'ms', target }
  }
  return [
    figure('a slide sized', { slides: oneOfEach.slides }, null),
    figure('40 readings fitted', { readings }, null),
    figure('a change of pitch', { pitchChanges: oneOfEach.pitchChanges }, null),
  ]
}
