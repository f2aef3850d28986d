import { cellText, harmlessText, headingText, type Table } from './table.ts'

/** Tells a spreadsheet that the file is UTF-8. */
const byteOrderMark = '\uFEFF'

/**
 * A table as a CSV file (RFC 4180): a line of headings with their units, commas between cells, decimal points,
 * cells in quotes where they need them. No cell begins like a formula.
 *
 * @example csvText({ title: 'Loops', columns: [{ heading: 'length', unit: 'mm' }], rows: [[171.4]] })
 */
export function csvText({ columns, rows }: Table): string {
  const headings = columns.map((column) => harmlessText(headingText(column)))
  const lines = [headings, ...rows.map((row) => row.map(cellText))]
  return `${byteOrderMark}${lines.map((cells) => `${cells.map(quoted).join(',')}\r\n`).join('')}`
}

function quoted(cell: string): string {
  return /[",;\t\r\n]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell
}
