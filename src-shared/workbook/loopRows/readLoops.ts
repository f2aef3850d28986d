import { readFingering } from '../../bench/readings/fingeringCell.ts'
import { mostCharacters, type PastedTable, pastedTable, shownCell } from '../../bench/readings/pastedTable.ts'
import { type LengthOptions, readLength } from '../../quantity/length.ts'
import { longestMm } from '../schemaParts.ts'
import { headingsOf, type LoopColumn, type LoopHeadings, orderOf } from './loopColumns.ts'

/** A loop of a table as it was read. */
export interface LoopRow {
  /** The line of the text it stands in, counted from 1. */
  readonly line: number
  readonly name: string
  readonly lengthMm: number
  readonly diameterMm?: number
  /** Absent where the table has no valves: then the loop must be in the design already. */
  readonly pressed?: readonly string[]
  readonly released?: readonly string[]
}

/** A line that was not read, and why. */
export interface LoopRefusal {
  readonly line: number
  readonly column: LoopColumn | 'line'
  readonly found: string
  readonly expected: string
}

/** A table of loops as it was understood. Lines are taken only when none was refused. */
export interface LoopsRead {
  readonly rows: readonly LoopRow[]
  readonly refusals: readonly LoopRefusal[]
  /** Headings of columns that are not read. */
  readonly unread: readonly string[]
}

/** How lengths and valves are understood. */
export interface LoopsContext {
  /** In the design's order. */
  readonly valveIds: readonly string[]
  /** The unit of lengths that say none. */
  readonly unit: 'mm' | 'in'
}

/** Most loops that a design may have. */
const mostLoops = 200

/**
 * Reads a table of loops from a spreadsheet's text or a CSV file: a line a loop with its name, length, and perhaps
 * unit, bore and valves, parted by tabs, semicolons or commas, with points or decimal commas, in any unit that a
 * length field takes. Headings, where there are any, say the order and the units. Every line that cannot be read is
 * refused by itself, with what was found and expected.
 *
 * @example readLoops('first;486,5;1', { valveIds: ['1'], unit: 'mm' }).rows // [{ line: 1, name: 'first', … }]
 */
export function readLoops(text: string, context: LoopsContext): LoopsRead {
  if (text.length > mostCharacters) return { rows: [], refusals: [tooLong(text.length)], unread: [] }
  const table = pastedTable(text)
  const headings = headingsOf(table.rows[0]?.cells ?? [])
  const body = headings === null ? table.rows : table.rows.slice(1)
  const unread = headings?.unread ?? []
  if (body.length === 0) return { rows: [], refusals: [empty], unread }
  if (body.length > mostLoops) return { rows: [], refusals: [tooMany(body.length)], unread }
  const answers = body.map(({ row, cells }) => readLine(row, cells, table, headings, context))
  const rows = answers.flatMap((answer) => ('expected' in answer ? [] : [answer]))
  const refusals = answers.flatMap((answer) =>
    'expected' in answer ? [{ ...answer, found: shownCell(answer.found) }] : [],
  )
  return { rows, refusals: [...refusals, ...twice(rows)].sort((a, b) => a.line - b.line), unread }
}

const empty: LoopRefusal = {
  line: 1,
  column: 'line',
  found: '',
  expected: 'a line a loop: name, length, valves down',
}

function tooLong(count: number): LoopRefusal {
  const expected = `at most ${mostCharacters} characters`
  return { line: 1, column: 'line', found: `${count} characters`, expected }
}

function tooMany(count: number): LoopRefusal {
  return { line: 1, column: 'line', found: `${count} lines`, expected: `at most ${mostLoops} loops` }
}

function readLine(
  line: number,
  cells: readonly string[],
  { separator }: PastedTable,
  headings: LoopHeadings | null,
  context: LoopsContext,
): LoopRow | LoopRefusal {
  const order = headings?.order ?? orderOf(cells)
  const refused = (column: LoopColumn | 'line', found: string, expected: string): LoopRefusal => ({
    line,
    column,
    found,
    expected,
  })
  if (order === null) return refused('line', cells.join(' | '), 'name, length, valves down')
  const comma = separator === ',' && headings === null ? cutAtComma(cells) : null
  if (comma !== null) return refused('length', comma, decimalCommas)
  const cell = (column: LoopColumn): string => cells[order[column] ?? -1] ?? ''
  const name = cell('name')
  if (name === '' || name.length > 60) return refused('name', name, 'a name of 1 to 60 characters')
  const unit = cell('unit')
  const lengthOf = (column: 'length' | 'diameter', atMost: number) =>
    readSize(cell(column), unit === '' ? (headings?.units[column] ?? '') : unit, {
      defaultUnit: context.unit,
      atLeast: 0,
      atMost,
    })
  const length = lengthOf('length', longestMm)
  if ('expected' in length) return refused('length', length.found, length.expected)
  const row = { line, name, lengthMm: length.mm }
  const diameter = cell('diameter') === '' ? null : lengthOf('diameter', 2000)
  if (diameter !== null && 'expected' in diameter)
    return refused('diameter', diameter.found, diameter.expected)
  const gate = readGate(cell('pressed'), cell('released'), order.pressed !== undefined, context.valveIds)
  if ('expected' in gate) return refused(gate.column, gate.found, gate.expected)
  return { ...row, ...(diameter === null ? {} : { diameterMm: diameter.mm }), ...gate }
}

const decimalCommas =
  'a decimal point, or columns parted by semicolons or tabs: between commas a decimal comma cannot be told from the next column'

/** Figures on both sides of a comma between length and bore may be one number with a decimal comma. */
function cutAtComma(cells: readonly string[]): string | null {
  const [, length = '', next = ''] = cells
  return cells.length > 3 && /^\d+$/.test(length) && /^\d+$/.test(next) ? `${length},${next}` : null
}

type Size = { readonly mm: number } | { readonly found: string; readonly expected: string }

/** A length with the unit of its line or its heading, unless it says its own. */
function readSize(cell: string, unit: string, options: LengthOptions): Size {
  const typed = unit.replace(/^(''|″)$/, '"')
  const isBare = /^[\d\s.,/+\-−–]+$/.test(cell)
  const found = cell === '' ? '' : typed === '' ? cell : `${cell} ${typed}`
  if (!isBare && cell !== '' && typed !== '' && !cell.toLowerCase().endsWith(typed.toLowerCase()))
    return { found, expected: 'a length in the one unit that its heading or its line says' }
  const small = typed.toLowerCase()
  const reading = readLength(isBare && typed !== '' ? `${cell} ${small}` : cell, options)
  return reading.ok ? { mm: reading.mm } : { found, expected: reading.expected }
}

type Gate = Pick<LoopRow, 'pressed' | 'released'>
type BadGate = {
  readonly column: 'pressed' | 'released'
  readonly found: string
  readonly expected: string
}

function readGate(down: string, up: string, hasValves: boolean, valveIds: readonly string[]): Gate | BadGate {
  if (!hasValves) return {}
  const pressed = readFingering(down, valveIds)
  if (typeof pressed === 'string') return { column: 'pressed', found: down, expected: pressed }
  if (up === '') return { pressed }
  const released = readFingering(up, valveIds)
  if (typeof released === 'string') return { column: 'released', found: up, expected: released }
  const both = released.find((id) => pressed.includes(id))
  if (both !== undefined)
    return { column: 'released', found: up, expected: `valve ${both} down or up, not both` }
  return { pressed, released }
}

/** Lines that name a loop again which an earlier one has named. */
function twice(rows: readonly LoopRow[]): readonly LoopRefusal[] {
  const seen = new Map<string, number>()
  return rows.flatMap(({ name, line }) => {
    const before = seen.get(name)
    if (before !== undefined)
      return [
        { line, column: 'name' as const, found: name, expected: `a name used once; line ${before} has it` },
      ]
    seen.set(name, line)
    return []
  })
}
