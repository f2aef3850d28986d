import { headingUnit } from './headingUnit.ts'

/** What a column of a table of loops may hold. */
export const loopColumns = ['name', 'length', 'unit', 'diameter', 'pressed', 'released'] as const
/** One kind of column of a table of loops. */
export type LoopColumn = (typeof loopColumns)[number]

/** Where each column stands, counted from 0; absent where there is none. */
export type LoopOrder = Readonly<Partial<Record<LoopColumn, number>>>

/** Words over a column that say what is in it. A column of valves up is looked for before one of valves down. */
const words: readonly (readonly [LoopColumn, RegExp])[] = [
  ['released', /\bup\b|releas/i],
  ['pressed', /\bdown\b|press|finger|gate|valve/i],
  ['diameter', /\bbore\b|diam/i],
  ['unit', /^units?$/i],
  ['length', /length|\btube\b/i],
  ['name', /name|loop|slide$/i],
]

/** What a line of headings says. */
export interface LoopHeadings {
  readonly order: LoopOrder
  /** The unit that stands over a column of lengths. */
  readonly units: Readonly<Partial<Record<LoopColumn, string>>>
  /** Headings of columns that hold nothing of a loop. */
  readonly unread: readonly string[]
}

/**
 * What a line of headings says, or `null` when the line is none: headings name at least the loops and their length.
 *
 * @example headingsOf(['loop', 'length (in)', 'valves']).units // { length: 'in' }
 */
export function headingsOf(cells: readonly string[]): LoopHeadings | null {
  const order: Partial<Record<LoopColumn, number>> = {}
  const units: Partial<Record<LoopColumn, string>> = {}
  const unread: string[] = []
  for (const [at, cell] of cells.entries()) {
    const column = words.find(([name, pattern]) => order[name] === undefined && pattern.test(cell))?.[0]
    if (column === undefined) {
      if (cell !== '') unread.push(cell)
      continue
    }
    order[column] = at
    const unit = headingUnit(cell)
    if (unit !== null) units[column] = unit
  }
  return order.name === undefined || order.length === undefined ? null : { order, units, unread }
}

/** Words that a cell of units may hold. */
const unitWord = /^(mm|cm|m|in|inch|inches|ft|"|''|″)$/i

/** Whether a cell holds a unit of length and nothing else. */
export function isUnit(cell: string): boolean {
  return unitWord.test(cell)
}

/**
 * The order of a line without headings over it: name, length, valves down; between them a unit, a bore or both;
 * behind them valves up. `null` for fewer than two cells or more than six.
 *
 * @example orderOf(['first', '486.5', 'mm', '1']) // { name: 0, length: 1, unit: 2, pressed: 3 }
 */
export function orderOf(cells: readonly string[]): LoopOrder | null {
  const hasUnit = isUnit(cells[2] ?? '')
  const rest = cells.length - (hasUnit ? 1 : 0)
  const unit = hasUnit ? { unit: 2 } : {}
  const next = hasUnit ? 3 : 2
  if (rest === 2) return { name: 0, length: 1, ...unit }
  if (rest === 3) return { name: 0, length: 1, ...unit, pressed: next }
  if (rest === 4) return { name: 0, length: 1, ...unit, diameter: next, pressed: next + 1 }
  if (rest === 5)
    return { name: 0, length: 1, ...unit, diameter: next, pressed: next + 1, released: next + 2 }
  return null
}
