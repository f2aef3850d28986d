/** A table as pasted: its cells, each row with its number in the text, counted from 1; empty rows are left out. */
export interface PastedTable {
  readonly separator: '\t' | ';' | ','
  readonly rows: readonly { readonly row: number; readonly cells: readonly string[] }[]
}

/** Most characters of a paste that are read: more than any table of the bench has. */
export const mostCharacters = 1_000_000
const longestShown = 60

/**
 * A cell as a refusal names it: a long one is cut.
 *
 * @example shownCell('12,5') // '12,5'
 */
export function shownCell(cell: string): string {
  return cell.length > longestShown ? `${cell.slice(0, longestShown)}…` : cell
}

/**
 * Takes text from a spreadsheet apart. The separator is the tab when there is one, else the semicolon, else the
 * comma; cells may stand in double quotes, and inches be marked with them. A line break inside quotes ends the row all the same.
 *
 * @example pastedTable('1-3;4;12,5').rows[0]?.cells // ['1-3', '4', '12,5']
 */
export function pastedTable(text: string): PastedTable {
  const separator = text.includes('\t') ? '\t' : text.includes(';') ? ';' : ','
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/)
  const rows = lines.flatMap((line, index) => {
    const cells = splitLine(line, separator)
    return cells.every((cell) => cell === '') ? [] : [{ row: index + 1, cells }]
  })
  return { separator, rows }
}

/** A quote opens a cell only at its start, and is written twice inside; elsewhere it is the mark of inches. */
function splitLine(line: string, separator: string): readonly string[] {
  const cells: string[] = []
  let cell = ''
  let quoted = false
  // Asking the cell itself at each quote would read a long one over and over.
  let isBlank = true
  for (let at = 0; at < line.length; at++) {
    const letter = line[at]!
    const next = line[at + 1]
    if (quoted && letter === '"') {
      if (next === '"') {
        cell += line[++at]
        isBlank = false
      } else quoted = false
    } else if (letter === '"' && isBlank && next !== undefined && next !== separator) {
      cell = ''
      isBlank = true
      quoted = true
    } else if (letter === separator && !quoted) {
      cells.push(cell.trim())
      cell = ''
      isBlank = true
    } else {
      cell += letter
      isBlank &&= letter.trim() === ''
    }
  }
  return [...cells, cell.trim()]
}

/**
 * A number with a point or a decimal comma, a sign of any shape and perhaps `c` or `cents` behind it; `null` when
 * the text is none, holds more than one point or comma, or is too large to be held.
 *
 * @example pastedNumber('−12,5 c') // -12.5
 */
export function pastedNumber(text: string): number | null {
  const match = /^([+\-−–]?)(\d+(?:[.,]\d+)?|[.,]\d+)\s*(?:c|ct|cents?|¢)?$/i.exec(text.trim())
  if (match === null) return null
  const [, sign = '', figures = ''] = match
  const size = Number(figures.replace(',', '.'))
  if (!Number.isFinite(size)) return null
  return sign === '' || sign === '+' ? size : 0 - size
}
