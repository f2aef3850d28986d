import { type Cell, cellText, harmlessText, headingText, numberText, type Table } from './table.ts'

/**
 * A table as text for the clipboard: a row a line, tabs between cells, as every spreadsheet takes it.
 *
 * @example tabText({ title: '', columns: [{ heading: 'fingering' }], rows: [['1-3']] }) // 'fingering\n1-3\n'
 */
export function tabText({ columns, rows }: Table): string {
  const headings = columns.map((column) => harmlessText(headingText(column)))
  const lines = [headings, ...rows.map((row) => row.map(cellText))]
  return lines.map((cells) => `${cells.map(oneLine).join('\t')}\n`).join('')
}

function oneLine(cell: string): string {
  const plain = cell.replace(/[\t\r\n]+/g, ' ')
  return plain.startsWith('"') ? `"${plain.replaceAll('"', '""')}"` : plain
}

/**
 * A table as markup for the clipboard, beside {@link tabText}. Numbers carry their value apart from how they are
 * written, and words say that they are words, so that a spreadsheet of any country takes `12.5` for a number and
 * `1-3` for no date.
 *
 * @example markupText(table).startsWith('<table>') // true
 */
export function markupText({ columns, rows }: Table): string {
  const head = columns.map((column) => `<th>${escaped(headingText(column))}</th>`).join('')
  const body = rows.map((row) => `<tr>${row.map(cellMarkup).join('')}</tr>`).join('\n')
  return `<table>\n<tr>${head}</tr>\n${body}\n</table>\n`
}

function cellMarkup(cell: Cell): string {
  if (cell === null) return '<td></td>'
  if (typeof cell === 'string')
    return `<td x:str sdnum="1033;0;@" style="mso-number-format:'\\@'">${escaped(harmlessText(cell))}</td>`
  const value = numberText(cell)
  return `<td x:num="${value}" sdval="${value}" sdnum="1033;">${value}</td>`
}

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;')
}
