import type { LengthsRecord } from '#shared/solve/lengthsRecord.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { type Cell, csvTables } from '../csvTables.ts'
import { inTableOrder } from '../inTableOrder.ts'

/** The lengths as comma-separated values: loops, errors, and what was reached, each under its own headings. */
export function lengthsCsv(design: Design, record: LengthsRecord): string {
  return csvTables([loops(design, record), errors(design, record), reached(record)])
}

function loops({ loops: present }: Design, { lengthsMm, heldByBounds }: LengthsRecord): readonly Cell[][] {
  return [
    ['loop', 'name', 'now (mm)', 'found (mm)', 'tube change (mm)', 'slide movement (mm)', 'held by bound'],
    ...present.map(({ id, name, lengthMm }) => {
      const foundMm = lengthsMm[id] ?? lengthMm
      const held = heldByBounds.find(({ loop }) => loop === id)
      const changeMm = foundMm - lengthMm
      return [id, name ?? null, lengthMm, foundMm, changeMm, changeMm / 2, held?.bound ?? null]
    }),
  ]
}

function errors(design: Design, { errorsCents }: LengthsRecord): readonly (readonly Cell[])[] {
  return [['fingering', 'error (cents)'], ...inTableOrder(design, errorsCents)]
}

function reached(record: LengthsRecord): readonly Cell[][] {
  return [
    ['status', 'objective', 'rms (cents)', 'largest (cents)', 'open change (mm)'],
    [record.status, record.objective, record.rmsCents, record.largestCents, record.openChangeMm],
  ]
}
