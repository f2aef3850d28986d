import type { Table } from '#shared/table/table.ts'
import { fingeringName } from '#shared/valves/fingering.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { headings, titles } from '../words/tableHeadings.ts'
import { type LengthUnit, lengthCell, lengthCellOrNone, lengthColumn } from './lengthCell.ts'

/** The loops of a design as they are read in again: name, length, bore, valves down and up. */
export function loopsTable({ name, loops }: Design, unit: LengthUnit): Table {
  return {
    title: titles.loops(name),
    columns: [
      { heading: headings.name },
      lengthColumn(headings.length, unit),
      lengthColumn(headings.diameter, unit),
      { heading: headings.pressed },
      { heading: headings.released },
      lengthColumn(headings.slideOut, unit),
      lengthColumn(headings.travel, unit),
    ],
    rows: loops.map((loop) => [
      loop.name ?? loop.id,
      lengthCell(loop.lengthMm, unit),
      lengthCellOrNone(loop.diameterMm, unit),
      fingeringName(loop.pressed),
      loop.released === undefined || loop.released.length === 0 ? null : fingeringName(loop.released),
      lengthCellOrNone(loop.slide?.outMm, unit),
      lengthCellOrNone(loop.slide?.travelMm, unit),
    ]),
  }
}
