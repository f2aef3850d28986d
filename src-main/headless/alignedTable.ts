import { shown, shownWidth } from './shown.ts'

/** One column of a table for reading: its heading and on which side its cells line up. */
export interface Column {
  readonly heading: string
  readonly align: 'left' | 'right'
}

/** Lines of text in which the columns line up, two spaces apart, the headings first. */
export function alignedTable(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const cells = [columns.map(({ heading }) => heading), ...rows].map((row) => row.map(shown))
  const widths = columns.map((_, i) => Math.max(...cells.map((row) => shownWidth(row[i] ?? ''))))
  const line = (row: readonly string[]): string =>
    columns
      .map(({ align }, i) => padded(row[i] ?? '', widths[i]!, align))
      .join('  ')
      .trimEnd()
  return `${cells.map(line).join('\n')}\n`
}

function padded(text: string, toWidth: number, align: Column['align']): string {
  const space = ' '.repeat(toWidth - shownWidth(text))
  return align === 'left' ? text + space : space + text
}
