import { openWorkbook } from '#shared/workbook/openWorkbook.ts'
import { brokenRule } from '#shared/workbook/rules.ts'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'
import { type Figure, medianMs } from './figure.ts'
import { fourDesigns } from './sevenValves.ts'

const runs = 50
const longestMs = 1000

/** A workbook of four designs checked, opened and written, and files of 20 MB refused. */
export function measureFiles(): readonly Figure[] {
  const workbook = fourDesigns(7, 16)
  const text = writeWorkbook(workbook)
  const loops = `{"designs":[{"loops":[${Array(440_000).fill('{"id":"L1","lengthMm":123.4,"pressed":[ "1" ]}').join()}]}]}`
  const lists = `[${Array(6_900_000).fill('[]').join()}]`
  const figure = (name: string, times: number, target: number | null, work: () => unknown): Figure => ({
    name,
    value: medianMs(times, work),
    unit: 'ms',
    target,
  })
  return [
    figure('every rule checked, as after each step', runs, null, () => brokenRule(workbook)),
    figure('opened', runs, null, () => openWorkbook(text)),
    figure('written', runs, null, () => writeWorkbook(workbook)),
    figure('20 MB of loops refused', 3, longestMs, () => openWorkbook(loops)),
    figure('20 MB of empty lists refused', 3, longestMs, () => openWorkbook(lists)),
  ]
}
