import type { Table } from '#shared/table/table.ts'
import type { ChartModel } from '../curves/chartModel.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { headings, titles } from '../words/tableHeadings.ts'
import { centsColumn, type LengthUnit, lengthCell, lengthColumn } from './lengthCell.ts'

/**
 * The figures of an error chart: a row a category; for every design its error and, where that differs from the
 * category, how it is played.
 */
export function chartTable({ title, categories, series }: ChartModel, heading: string): Table {
  const played = series.map(({ notes }) =>
    notes.some((note, i) => note !== null && note !== categories[i]?.label),
  )
  const columns = series.flatMap(({ name }, i) => [
    ...(played[i] ? [{ heading: `${name}, ${headings.fingering}` }] : []),
    centsColumn(name),
  ])
  const rows = categories.map(({ label }, category) => [
    label,
    ...series.flatMap(({ values, notes }, i) => [
      ...(played[i] ? [notes[category] ?? null] : []),
      values[category] ?? null,
    ]),
  ])
  return { title, columns: [{ heading }, ...columns], rows }
}

/** The combination table of a design: every fingering with the tube it has and needs. */
export function combinationsTable({ design, tables }: DerivedDesign, unit: LengthUnit): Table {
  const loopNames = new Map(design.loops.map(({ id, name }) => [id, name ?? id]))
  return {
    title: titles.combinations(design.name),
    columns: [
      { heading: headings.fingering },
      { heading: headings.semitones },
      { heading: headings.loops },
      lengthColumn(headings.has, unit),
      lengthColumn(headings.needs, unit),
      lengthColumn(headings.short, unit),
      centsColumn(headings.error),
    ],
    rows: tables.combinations.map((row) => [
      row.fingering,
      row.semitones,
      row.loops.map((id) => loopNames.get(id) ?? id).join('; '),
      lengthCell(row.lengthMm, unit),
      lengthCell(row.requiredLengthMm, unit),
      lengthCell(row.requiredLengthMm - row.lengthMm, unit),
      row.errorCents,
    ]),
  }
}
