import { tuningTables } from '#shared/tuning/tables.ts'
import { instrumentOf } from '#shared/workbook/instrumentOf.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { type Figure, medianMs } from './figure.ts'
import { fourDesigns } from './sevenValves.ts'

/** All tables and summaries of four designs, and how their cost grows with fingerings and harmonics. */
export function measureTables(): readonly Figure[] {
  const tablesMs = (workbook: Workbook): number => medianMs(200, () => allTables(workbook))
  const whole = fourDesigns(7, 16)
  const seven = tablesMs(whole)
  const six = tablesMs(fourDesigns(6, 16))
  const half = tablesMs(fourDesigns(7, 8))
  const listed = medianMs(200, () => everyCandidate(whole))
  return [
    { name: 'tables of 4 designs, 7 valves, harmonics 1 to 16', value: seven, unit: 'ms', target: 2 },
    { name: 'the same and a list of every candidate of every note', value: listed, unit: 'ms', target: null },
    { name: 'cost for twice the fingerings (6 to 7 valves)', value: seven / six, unit: '×', target: null },
    { name: 'cost for twice the harmonics (8 to 16)', value: seven / half, unit: '×', target: null },
  ]
}

function allTables(workbook: Workbook): number {
  // Notes, with the ways to play each, and their summary are worked out when they are read.
  return workbook.designs.reduce((sum, design) => {
    const { notes, summary } = tuningTables(instrumentOf(workbook, design))
    return sum + notes.length + summary.byNote.rmsCents
  }, 0)
}

/** As the fingering chart and a file of tables want them: about ten thousand candidates. */
function everyCandidate(workbook: Workbook): number {
  return workbook.designs.reduce((sum, design) => {
    const { notes, summary } = tuningTables(instrumentOf(workbook, design))
    return notes.reduce((count, note) => count + note.candidates().length, sum + summary.byNote.rmsCents)
  }, 0)
}
