import Papa from 'papaparse'

/** What stands in a cell of comma-separated values; `null` is empty. Numbers are unrounded. */
export type Cell = string | number | boolean | null

/** Tables as comma-separated values, each with its headings as its first row and an empty line between two. */
export function csvTables(tables: readonly (readonly (readonly Cell[])[])[]): string {
  return tables.map(written).join('\n')
}

/** A design or a job may be named `=…`, which a spreadsheet would run. */
function written(rows: readonly (readonly Cell[])[]): string {
  const lines = rows.map((row) => [...row])
  return `${Papa.unparse(lines, { newline: '\n', escapeFormulae: true })}\n`
}
