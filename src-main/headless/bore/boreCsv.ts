import type { DesignModes } from '#shared/workbook/boreRecord.ts'
import { type Cell, csvTables } from '../csvTables.ts'

const headings: readonly string[] = [
  'design',
  'fingering',
  'mode',
  'peak (Hz)',
  'height (Pa s/m³)',
  'width (Hz)',
  'equivalent fundamental (cents)',
  'target (Hz)',
  'error (cents)',
  'length model (Hz)',
  'length model error (cents)',
  'difference (cents)',
  'group length (mm)',
]

/** The modes as comma-separated values, a row a mode. Numbers are unrounded. */
export function boreCsv(designs: readonly DesignModes[]): string {
  return csvTables([[headings, ...designs.flatMap(modeRows)]])
}

function modeRows({ design, fingerings }: DesignModes): Cell[][] {
  return fingerings.flatMap(({ fingering, modes }) =>
    modes.map((mode) => [
      design.id,
      fingering,
      mode.mode,
      mode.hz,
      mode.heightPaSPerM3,
      mode.widthHz,
      mode.equivalentFundamentalCents,
      mode.targetHz,
      mode.errorCents,
      mode.lengthModelHz,
      mode.lengthModelErrorCents,
      mode.differenceCents,
      mode.groupLength.groupLengthMm,
    ]),
  )
}
