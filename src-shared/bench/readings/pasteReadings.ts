import { parseNote } from '../../pitch/parseNote.ts'
import { readFingering } from './fingeringCell.ts'
import { mostCharacters, type PastedTable, pastedNumber, pastedTable, shownCell } from './pastedTable.ts'

/** A reading as typed: on a harmonic, or on a note whose harmonic is still to be found. */
export interface PastedReading {
  readonly pressed: readonly string[]
  readonly at:
    | { readonly kind: 'harmonic'; readonly harmonic: number }
    | { readonly kind: 'note'; readonly note: string; readonly midi: number }
  readonly cents: number
}

/** Why a paste was not taken; `row` counts the lines of the text from 1, `column` the cells from 1. */
export interface PasteRefusal {
  readonly kind: 'refused'
  readonly row: number
  readonly column: number
  readonly found: string
  readonly expected: string
  readonly message: string
}

/** The readings that were pasted, or why they were not taken. */
export type PasteAnswer = { readonly kind: 'rows'; readonly rows: readonly PastedReading[] } | PasteRefusal

const columns = ['fingering', 'harmonic', 'cents'] as const
type Column = (typeof columns)[number]
/** Where each column stands, counted from 0. */
type Order = Readonly<Record<Column, number>>

/** Words over a column that say what is in it. */
const headings: Readonly<Record<Column, RegExp>> = {
  fingering: /finger|valve/i,
  harmonic: /harmonic|partial|note/i,
  cents: /cent|error|deviation/i,
}

const mostHarmonic = 32

/**
 * Reads rows of fingering, harmonic or note, and cents from a spreadsheet's text: tabs, semicolons or commas,
 * points or decimal commas, with a row of headings (which then say the order) or without. All rows are taken, or
 * none: the first cell that cannot be read is named. `valveIds` are in the design's order.
 *
 * @example pasteReadings('1-3\t4\t12,5', ['1', '2', '3']) // { kind: 'rows', rows: [{ pressed: ['1', '3'], … }] }
 */
export function pasteReadings(text: string, valveIds: readonly string[]): PasteAnswer {
  if (text.length > mostCharacters) {
    return refusal(1, 1, `${text.length} characters`, `at most ${mostCharacters} characters`)
  }
  const table = pastedTable(text)
  const [first] = table.rows
  const order = first === undefined ? null : orderOf(first.cells)
  const body = order === null ? table.rows : table.rows.slice(1)
  if (body.length === 0) return refusal(1, 1, text.trim(), 'rows of fingering, harmonic or note, and cents')
  const rows: PastedReading[] = []
  for (const { row, cells } of body) {
    const answer = readRow(cells, order, valveIds, table.separator)
    if ('kind' in answer) return refusal(row, answer.column, answer.found, answer.expected)
    rows.push(answer)
  }
  return { kind: 'rows', rows }
}

/** The order that a row of headings gives, or `null` when the row is no such thing. */
function orderOf(cells: readonly string[]): Order | null {
  const place = (column: Column) => cells.findIndex((cell) => headings[column].test(cell))
  const order = { fingering: place('fingering'), harmonic: place('harmonic'), cents: place('cents') }
  return columns.every((column) => order[column] >= 0) ? order : null
}

/** What a cell got wrong. */
interface BadCell {
  readonly kind: 'bad'
  readonly column: number
  readonly found: string
  readonly expected: string
}

function readRow(
  cells: readonly string[],
  order: Order | null,
  valveIds: readonly string[],
  separator: PastedTable['separator'],
): PastedReading | BadCell {
  const { fingering, harmonic, cents } = order ?? { fingering: 0, harmonic: 1, cents: 2 }
  const bad = (column: number, expected: string): BadCell => ({
    kind: 'bad',
    column: column + 1,
    found: cells[column] ?? '',
    expected,
  })
  const extra = cells.findIndex((cell, index) => index > 2 && cell !== '')
  if (order === null && extra > 0) return bad(extra, tooMany(separator))
  const pressed = readFingering(cells[fingering] ?? '', valveIds)
  if (typeof pressed === 'string') return bad(fingering, pressed)
  const at = readAt(cells[harmonic] ?? '')
  if (at === null) return bad(harmonic, `a harmonic from 1 to ${mostHarmonic}, or a note such as F3 or Bb2`)
  const value = pastedNumber(cells[cents] ?? '')
  if (value === null) return bad(cents, 'cents, such as -12 or 4,5')
  return { pressed, at, cents: value }
}

function readAt(text: string): PastedReading['at'] | null {
  const midi = parseNote(text)
  if (midi !== null) return { kind: 'note', note: text.trim(), midi }
  const harmonic = /^\d+$/.test(text) ? Number(text) : 0
  return harmonic >= 1 && harmonic <= mostHarmonic ? { kind: 'harmonic', harmonic } : null
}

/** A fourth cell between commas is most often a decimal comma. */
function tooMany(separator: PastedTable['separator']): string {
  const three = 'three columns: fingering, harmonic or note, cents'
  return separator === ',' ? `${three}; with decimal commas, separate columns by tabs or semicolons` : three
}

function refusal(row: number, column: number, cell: string, expected: string): PasteRefusal {
  const found = shownCell(cell)
  const shown = found === '' ? 'nothing' : `“${found}”`
  const message = `Row ${row}, column ${column}: found ${shown}, expected ${expected}.`
  return { kind: 'refused', row, column, found, expected, message }
}
