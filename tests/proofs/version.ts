import { emptyWorkbook } from '#shared/workbook/newWorkbook.ts'
import { openWorkbook } from '#shared/workbook/openWorkbook.ts'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'

/** Longer than what is written in one step, so that a kill can fall between two. */
const padding = 'The third slide was short. '.repeat(24_000)

/** The text of a workbook of some 650 kB that says which version it is, in its name and at its very end. */
export function versionText(version: number): string {
  return writeWorkbook({ ...emptyWorkbook(`version ${version}`), notes: `${padding}${version}` })
}

/** The version that a text holds whole; `null` when it is cut, mixed or damaged in any way. */
export function versionIn(text: string): number | null {
  const opened = openWorkbook(text)
  if (!opened.ok) return null
  const version = Number(/^version (\d+)$/.exec(opened.workbook.name)?.[1])
  return Number.isInteger(version) && text === versionText(version) ? version : null
}
