import type { ReactNode } from 'react'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { type Cell, type Column, headingText, type Table } from '#shared/table/table.ts'

interface PaperTableProps {
  readonly table: Table
  /** Column whose cells hold the unit of their row, where units go by row. */
  readonly unitColumn?: number
}

/** A table on paper: figures rounded to what a bench can hold, the headings again on every page. */
export function PaperTable({ table, unitColumn }: PaperTableProps): ReactNode {
  const { columns, rows, title } = table
  const unitOf = (row: readonly Cell[], column: Column): string | undefined =>
    unitColumn === undefined ? column.unit : String(row[unitColumn] ?? '')
  return (
    <table className="figures paperTable">
      <caption>{title}</caption>
      <thead>
        <tr>
          {columns.map((column, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two designs may have one name
            <th scope="col" key={i} className={longOrNot(headingText(column))}>
              {headingText(column)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, line) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a row is known by its place
          <tr key={line}>
            {row.map((cell, i) =>
              i === 0 ? (
                // biome-ignore lint/suspicious/noArrayIndexKey: as above
                <th scope="row" key={i} className={longOrNot(String(cell))}>
                  {shownCell(cell, columns[0]!.unit)}
                </th>
              ) : (
                // biome-ignore lint/suspicious/noArrayIndexKey: as above
                <td key={i} className={cellClass(cell)}>
                  {shownCell(cell, unitOf(row, columns[i]!))}
                </td>
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** Long words may be broken anywhere, short ones never. */
function longOrNot(text: string): string | undefined {
  return text.length > 24 ? 'long' : undefined
}

function cellClass(cell: Cell): string | undefined {
  if (typeof cell === 'number') return undefined
  return longOrNot(cell ?? '') === undefined ? 'words' : 'words long'
}

/** Decimals by unit; numbers without a unit are counts. */
const digits: Readonly<Record<string, number>> = { mm: 1, in: 3, Hz: 2 }

function shownCell(cell: Cell, unit: string | undefined): string {
  if (cell === null) return ''
  if (typeof cell === 'string') return cell
  if (unit === 'cents') return signedCents(cell)
  return plainFigure(cell, digits[unit ?? ''] ?? (Number.isInteger(cell) ? 0 : 2))
}
