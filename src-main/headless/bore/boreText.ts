import type { FingeringModes } from '#shared/bore/fingeringModes.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type { DesignModes } from '#shared/workbook/boreRecord.ts'
import { alignedTable, type Column } from '../alignedTable.ts'
import { shown } from '../shown.ts'

/** The modes for reading: each design under its name, each fingering in a table of its own. */
export function boreText(designs: readonly DesignModes[]): string {
  if (designs.length === 0) return 'No design has a bore.\n'
  return designs.map(designText).join('\n')
}

function designText({ design, input, fingerings, slicing }: DesignModes): string {
  const { waveFronts, temperatureC, bellTemperatureC } = input.conditions
  const warmth =
    bellTemperatureC === undefined ? '' : ` at the lips, ${plainFigure(bellTemperatureC, 1)} °C at the bell`
  const air = `${waveFronts} wave fronts, ${plainFigure(temperatureC, 1)} °C${warmth}, ${slicing.slices} slices`
  const heading = `${shown(design.name)} (${shown(design.id)}): ${air}\n`
  return [heading, ...fingerings.map(fingeringText)].join('\n')
}

const columns: readonly Column[] = [
  { heading: 'mode', align: 'right' },
  { heading: 'peak Hz', align: 'right' },
  { heading: 'height MPa s/m³', align: 'right' },
  { heading: 'f/n cents', align: 'right' },
  { heading: 'target Hz', align: 'right' },
  { heading: 'error cents', align: 'right' },
  { heading: 'length model Hz', align: 'right' },
  { heading: 'error cents', align: 'right' },
  { heading: 'difference', align: 'right' },
]

function fingeringText({ fingering, status, nominalFundamentalHz, modes }: FingeringModes): string {
  const heading = `Fingering ${fingering}`
  if (status === 'none') return `${heading}: no resonance in the range looked at\n`
  const nominal =
    nominalFundamentalHz === null ? '' : `, nominal fundamental ${plainFigure(nominalFundamentalHz, 2)} Hz`
  const rows = modes.map((mode) => [
    String(mode.mode),
    plainFigure(mode.hz, 2),
    plainFigure(mode.heightPaSPerM3 / 1e6, 2),
    cents(mode.equivalentFundamentalCents),
    hertz(mode.targetHz),
    cents(mode.errorCents),
    hertz(mode.lengthModelHz),
    cents(mode.lengthModelErrorCents),
    cents(mode.differenceCents),
  ])
  return `${heading}${nominal}\n${alignedTable(columns, rows)}`
}

const cents = (value: number | null): string => (value === null ? '' : signedCents(value))
const hertz = (value: number | null): string => (value === null ? '' : plainFigure(value, 2))
