import { tuningTables } from '#shared/tuning/tables.ts'
import { instrumentOf } from '#shared/workbook/instrumentOf.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { type Figure, medianMs } from './figure.ts'
import { fourDesigns } from './sevenValves.ts'

/** All tables and summaries of four designs, and how their cost grows with fingerings and harmonics. */
export function measureTables(): readonly Figure[] {
  const tablesMs = (workbook: Workbook): number => medianMs(200, () => allTables(workbook))
  const seven = tablesMs(fourDesigns(7, 16))
  const six = tablesMs(fourDesigns(6, 16))
  const half = tablesMs(fourDesigns(7, 8))
  return [
    { name: 'tables of 4 designs, 7 valves, harmonics 1 to 16', value: seven, unit: 'ms', target: 2 },
    { name: 'cost for twice the fingerings (6 to 7 valves)', value: seven / six, unit: '×', target: null },
    { name: 'cost for twice the harmonics (8 to 16)', value: seven / half, unit: '×', target: null },
  ]
}

function allTables(workbook: Workbook): number {
  // Notes and their summary are worked out when they are read.
  return workbook.designs.reduce((sum, design) => {
    const { notes, summary } = tuningTables(instrumentOf(workbook, design))
    return sum + notes.length + summary.byNote.rmsCents
  }, 0)
}
