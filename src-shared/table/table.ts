/** What stands in a cell: words, a number in its column's unit, or nothing. */
export type Cell = string | number | null

/** A column: what is in it, and the unit of its numbers. */
export interface Column {
  readonly heading: string
  readonly unit?: string
}

/** A table as plain values, for files, the clipboard and paper alike. Numbers are unrounded. */
export interface Table {
  readonly title: string
  readonly columns: readonly Column[]
  /** As many cells as there are columns, each. */
  readonly rows: readonly (readonly Cell[])[]
}

/**
 * What stands over a column, with its unit.
 *
 * @example headingText({ heading: 'length', unit: 'mm' }) // 'length (mm)'
 */
export function headingText({ heading, unit }: Column): string {
  return unit === undefined ? heading : `${heading} (${unit})`
}

/**
 * A number as every program reads it, whatever its country: a decimal point, no marks of thousands, the sign of a
 * keyboard. Zero has no sign. Throws on what is not finite, which no table may hold.
 *
 * @example numberText(-12.5) // '-12.5'
 */
export function numberText(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`A table cannot hold ${value}`)
  return String(value + 0)
}

/**
 * Words that no spreadsheet takes for a formula: what begins like one has an apostrophe before it.
 *
 * @example harmlessText('=1+1') // "'=1+1"
 */
export function harmlessText(text: string): string {
  return /^[=+\-@\t\r\n]/.test(text) ? `'${text}` : text
}

/**
 * A cell as text; nothing is empty.
 *
 * @example cellText(null) // ''
 */
export function cellText(cell: Cell): string {
  if (cell === null) return ''
  return typeof cell === 'number' ? numberText(cell) : harmlessText(cell)
}
