import type { ReactNode } from 'react'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { type Cell, type Column, headingText, type Table } from '#shared/table/table.ts'

interface PaperTableProps {
  readonly table: Table
  /** Column whose cells hold the unit of their row, where units go by row. */
  readonly unitColumn?: number
  /** Rows whose cents are sizes and have no sign, by what stands first in them. */
  readonly unsigned?: readonly string[]
}

/** A table on paper: figures rounded to what a bench can hold, the headings again on every page. */
export function PaperTable({ table, unitColumn, unsigned = [] }: PaperTableProps): ReactNode {
  const { columns, rows, title } = filled(table)
  const hasWords = columns.map((_, i) => i > 0 && isOfWords(rows, i))
  const classOf = (i: number, ...more: readonly (string | undefined)[]): string | undefined =>
    [hasWords[i] ? 'ofWords' : undefined, ...more].filter((name) => name !== undefined).join(' ') || undefined
  const shown = (row: readonly Cell[], column: Column, cell: Cell): string => {
    const unit = unitColumn === undefined ? column.unit : String(row[unitColumn] ?? '')
    return shownCell(cell, unit, !unsigned.includes(String(row[0])))
  }
  return (
    <table className="figures paperTable">
      <caption>{title}</caption>
      <thead>
        <tr>
          {columns.map((column, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two designs may have one name
            <th scope="col" key={i} className={classOf(i, longOrNot(headingText(column)))}>
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
                  {shownCell(cell, columns[0]!.unit, true)}
                </th>
              ) : (
                // biome-ignore lint/suspicious/noArrayIndexKey: as above
                <td key={i} className={classOf(i, longOrNot(typeof cell === 'string' ? cell : ''))}>
                  {shown(row, columns[i]!, cell)}
                </td>
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** Without the columns that no row has anything in. */
function filled({ columns, rows, title }: Table): Table {
  const kept = columns.map((_, i) => i === 0 || rows.length === 0 || rows.some((row) => row[i] !== null))
  const only = <Each,>(list: readonly Each[]): readonly Each[] => list.filter((_, i) => kept[i])
  return { title, columns: only(columns), rows: rows.map(only) }
}

/** Texts of several words go on in a further line; only words that no column has room for are broken. */
function longOrNot(text: string): string | undefined {
  if (text.split(/[\s-]/).some((word) => word.length > 20)) return 'long'
  return text.length > 24 ? 'wraps' : undefined
}

/** A column of words alone, which is read from the left. */
function isOfWords(rows: readonly (readonly Cell[])[], column: number): boolean {
  const cells = rows.map((row) => row[column] ?? null)
  return cells.some((cell) => cell !== null) && !cells.some((cell) => typeof cell === 'number')
}

/** Decimals by unit; other numbers without a unit are counts. */
const digits: Readonly<Record<string, number>> = { mm: 1, in: 3, Hz: 2, cents: 1 }

function shownCell(cell: Cell, unit: string | undefined, isSigned: boolean): string {
  if (cell === null) return ''
  if (typeof cell === 'string') return cell
  if (unit === 'cents' && isSigned) return signedCents(cell)
  return plainFigure(cell, digits[unit ?? ''] ?? (Number.isInteger(cell) ? 0 : 2))
}
