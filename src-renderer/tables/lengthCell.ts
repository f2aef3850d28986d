import { unitMm } from '#shared/quantity/units.ts'
import type { Column } from '#shared/table/table.ts'

export type LengthUnit = 'mm' | 'in'

/** A column of lengths in the unit of the settings. */
export function lengthColumn(heading: string, unit: LengthUnit): Column {
  return { heading, unit }
}

/** A length in the unit of the settings, unrounded. */
export function lengthCell(lengthMm: number, unit: LengthUnit): number {
  return lengthMm / unitMm(unit)
}

/** The same where there may be none. */
export function lengthCellOrNone(lengthMm: number | null | undefined, unit: LengthUnit): number | null {
  return lengthMm === null || lengthMm === undefined ? null : lengthCell(lengthMm, unit)
}

/** A column of errors. */
export function centsColumn(heading: string): Column {
  return { heading, unit: 'cents' }
}
