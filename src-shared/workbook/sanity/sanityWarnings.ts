import { airOutsideStatedRange } from '../../air/speedOfSound.ts'
import type { TuningTables } from '../../tuning/tables.ts'
import type { Design, Workbook } from '../workbook.ts'
import { instrumentWarnings } from './instrumentWarnings.ts'
import { loopWarnings } from './loopWarnings.ts'
import { routeWarnings } from './routeWarnings.ts'
import type { Warning } from './warning.ts'

/** What looks like a slip in the workbook's own values: air outside the range that its formula is stated for. */
export function airWarnings(workbook: Workbook): readonly Warning[] {
  return airOutsideStatedRange(workbook.air).map(({ field, found, expected }) => ({
    path: `air.${field}`,
    found,
    expected,
    message: `The speed of sound is extrapolated: found ${found}, expected ${expected}.`,
  }))
}

/**
 * What looks like a slip in one design.
 *
 * @param tables the design's own tables
 * @param index its place in the workbook, for the paths
 */
export function designWarnings(design: Design, tables: TuningTables, index: number): readonly Warning[] {
  const at = `designs[${index}]`
  const openMm = tables.mainSlide.nominalOpenMm
  return [
    ...instrumentWarnings(design, openMm, at),
    ...loopWarnings(design, openMm, at),
    ...routeWarnings(design, tables, at),
  ]
}
