import type { BoreDimension, FittedBore } from '#shared/bore/fitBore.ts'
import type { Cell, Table } from '#shared/table/table.ts'
import type { DesignSection } from '#shared/workbook/bore.ts'
import { type Freedom, valueNow } from '../bore/fit/freedoms.ts'
import type { TargetRow } from '../bore/fit/targetRows.ts'
import { sectionName } from '../bore/sectionNames.ts'
import { boreWords } from '../words/bore.ts'
import { boreHeadings as headings, boreTitles as titles } from '../words/tableHeadings.ts'
import { centsColumn, type LengthUnit, lengthCell } from './lengthCell.ts'

/** The modes that a fit may aim at, with 1 for those that count and 0 for the others. */
export function targetsTable(design: string, rows: readonly TargetRow[]): Table {
  return {
    title: titles.targets(design),
    columns: [
      { heading: headings.mode },
      { heading: headings.aimedAt },
      centsColumn(headings.offset),
      { heading: headings.target, unit: 'Hz' },
      { heading: headings.frequency, unit: 'Hz' },
      centsColumn(headings.againstTarget),
    ],
    rows: rows.map(({ mode, counts, offsetCents, targetHz, hz, errorCents }) => [
      mode,
      counts ? 1 : 0,
      offsetCents,
      targetHz,
      hz,
      errorCents,
    ]),
  }
}

/** What a fit would change: a row a dimension, each in its own unit. */
export function fitTable(
  design: string,
  sections: readonly DesignSection[],
  present: readonly Freedom[],
  free: readonly Pick<Freedom, 'section' | 'dimension'>[],
  { values }: Pick<FittedBore, 'values'>,
  unit: LengthUnit,
): Table {
  const inUnit = (dimension: BoreDimension, value: number | undefined): Cell => {
    if (value === undefined) return null
    return dimension === 'lengthMm' ? lengthCell(value, unit) : value
  }
  return {
    title: titles.proposal(design),
    columns: [
      { heading: headings.section },
      { heading: headings.dimension },
      { heading: headings.unit },
      { heading: headings.now },
      { heading: headings.fitted },
    ],
    rows: free.map(({ section, dimension }, i) => [
      sectionName(sections, section),
      boreWords.freeOf[dimension] ?? dimension,
      unitOf(dimension, unit),
      inUnit(dimension, valueNow(present, { section, dimension })),
      inUnit(dimension, values[i]),
    ]),
  }
}

function unitOf(dimension: BoreDimension, unit: LengthUnit): string | null {
  if (dimension === 'volumeMm3') return boreWords.volumeUnit
  return dimension === 'flare' ? null : unit
}
