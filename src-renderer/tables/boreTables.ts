import { sectionLengthMm } from '#shared/bore/checkBore.ts'
import type { FingeredMode, FingeringModes } from '#shared/bore/fingeringModes.ts'
import type { Cell, Column, Table } from '#shared/table/table.ts'
import type { DesignSection } from '#shared/workbook/bore.ts'
import type { SettledPitch } from '../bore/pictures/settledPitches.ts'
import { boreWords } from '../words/bore.ts'
import { boreHeadings as headings, boreTitles as titles } from '../words/tableHeadings.ts'
import { centsColumn, type LengthUnit, lengthCell, lengthCellOrNone, lengthColumn } from './lengthCell.ts'

/**
 * What both models say of every fingering against its target, and by how much they differ unless there is no room for
 * it: a row a fingering.
 */
export function modelsTable(
  design: string,
  all: readonly FingeringModes[],
  [firstMode, lastMode]: readonly [number, number],
  withDifferences = true,
): Table {
  const numbers = Array.from({ length: lastMode - firstMode + 1 }, (_, i) => firstMode + i)
  return {
    title: titles.models(design),
    columns: [
      { heading: headings.fingering },
      centsColumn(headings.lengthModel),
      ...numbers.flatMap((mode) => [
        centsColumn(headings.boreOfMode(mode)),
        ...(withDifferences ? [centsColumn(headings.differenceOfMode(mode))] : []),
      ]),
    ],
    rows: all.map(({ fingering, modes }) => [
      fingering,
      modes.find((each) => each.errorCents !== null)?.lengthModelErrorCents ?? null,
      ...numbers.flatMap((number) => {
        const mode = modes.find((each) => each.mode === number)
        const difference = withDifferences ? [mode?.differenceCents ?? null] : []
        return [mode?.errorCents ?? null, ...difference]
      }),
    ]),
  }
}

interface Named {
  readonly fingering: string
}

const hertzColumn = (heading: string): Column => ({ heading, unit: 'Hz' })

/** A row for each mode of the fingerings shown: fingering, mode, its frequency, and what is asked of it. */
function modesTable(
  title: string,
  all: readonly FingeringModes[],
  shown: readonly Named[],
  columns: readonly Column[],
  cellsOf: (mode: FingeredMode, fingering: FingeringModes) => readonly Cell[],
): Table {
  return {
    title,
    columns: [
      { heading: headings.fingering },
      { heading: headings.mode },
      hertzColumn(headings.frequency),
      ...columns,
    ],
    rows: shown.flatMap(({ fingering: name }) => {
      const fingering = all.find((each) => each.fingering === name)
      if (fingering === undefined) return []
      return fingering.modes.map((mode) => [name, mode.mode, mode.hz, ...cellsOf(mode, fingering)])
    }),
  }
}

/** The peaks of the input impedance. A peak too shallow to have a width has none. */
export function peaksTable(design: string, all: readonly FingeringModes[], shown: readonly Named[]): Table {
  const columns = [{ heading: headings.height, unit: boreWords.impedanceUnit }, hertzColumn(headings.width)]
  return modesTable(titles.peaks(design), all, shown, columns, ({ heightPaSPerM3, widthHz }) => [
    heightPaSPerM3 / 1e6,
    widthHz,
  ])
}

/** Equivalent fundamentals, and how far each is from the one that suits its fingering best. */
export function fundamentalTable(
  design: string,
  all: readonly FingeringModes[],
  shown: readonly Named[],
): Table {
  const columns = [
    hertzColumn(headings.equivalentFundamental),
    hertzColumn(headings.suitsBest),
    centsColumn(headings.againstBest),
  ]
  return modesTable(titles.fundamental(design), all, shown, columns, (mode, { nominalFundamentalHz }) => [
    mode.equivalentFundamentalHz,
    nominalFundamentalHz,
    mode.equivalentFundamentalCents,
  ])
}

/** Everything about the modes of one fingering, a row a mode. */
export function fingeringModesTable(title: string, { modes }: FingeringModes): Table {
  return {
    title,
    columns: [
      { heading: headings.mode },
      hertzColumn(headings.frequency),
      hertzColumn(headings.width),
      { heading: headings.height, unit: boreWords.impedanceUnit },
      hertzColumn(headings.equivalentFundamental),
      centsColumn(headings.againstBest),
    ],
    rows: modes.map((mode) => [
      mode.mode,
      mode.hz,
      mode.widthHz,
      mode.heightPaSPerM3 / 1e6,
      mode.equivalentFundamentalHz,
      mode.equivalentFundamentalCents,
    ]),
  }
}

/** Group lengths, and what one more millimetre of tube at the valves does. */
export function groupLengthTable(
  design: string,
  all: readonly FingeringModes[],
  shown: readonly Named[],
  unit: LengthUnit,
): Table {
  const columns = [lengthColumn(headings.groupLength, unit), centsColumn(headings.oneMoreMillimetre)]
  return modesTable(titles.groupLength(design), all, shown, columns, ({ groupLength }) => [
    lengthCell(groupLength.groupLengthMm, unit),
    groupLength.centsPerMm,
  ])
}

/** Where notes would settle by the weighted sum; one that settles nowhere near its peak has no pitch. */
export function settledPitchesTable(design: string, pitches: readonly SettledPitch[]): Table {
  return {
    title: titles.pitches(design),
    columns: [
      { heading: headings.fingering },
      { heading: headings.mode },
      hertzColumn(headings.settlesAt),
      hertzColumn(headings.peak),
      centsColumn(headings.abovePeak),
      centsColumn(headings.againstOpen),
    ],
    rows: pitches.map(({ fingering, mode, hz, peakHz, abovePeakCents, againstOpenCents }) => [
      fingering,
      mode,
      hz,
      peakHz,
      abovePeakCents,
      againstOpenCents,
    ]),
  }
}

/** The sections of a bore from the lips to the bell; a measured profile has the diameters of its ends. */
export function sectionsTable(design: string, sections: readonly DesignSection[], unit: LengthUnit): Table {
  return {
    title: titles.sections(design),
    columns: [
      { heading: headings.number },
      { heading: headings.kind },
      { heading: headings.name },
      lengthColumn(headings.length, unit),
      lengthColumn(headings.diameter, unit),
      lengthColumn(headings.atEnd, unit),
      { heading: headings.volume, unit: boreWords.volumeUnit },
      { heading: headings.flare },
      { heading: headings.points },
    ],
    rows: sections.map((section, i) => {
      const lengthMm = hasLength(section) ? sectionLengthMm(section) : null
      const [startMm, endMm] = diametersMm(section)
      return [
        i + 1,
        boreWords.kinds[section.kind],
        section.name ?? null,
        ...[lengthMm, startMm, endMm].map((mm) => lengthCellOrNone(mm, unit)),
        section.kind === 'cup' ? section.volumeMm3 : null,
        section.kind === 'bell' ? section.flare : null,
        section.kind === 'profile' ? section.points.length : null,
      ]
    }),
  }
}

function hasLength({ kind }: DesignSection): boolean {
  return kind !== 'cup' && kind !== 'valves'
}

/** Diameters at the start and at the end, mm; where the bore stays the same there is only the first. */
function diametersMm(section: DesignSection): readonly [number | null, number | null] {
  switch (section.kind) {
    case 'cup':
      return [null, null]
    case 'cylinder':
    case 'valves':
      return [section.diameterMm, null]
    case 'cone':
    case 'bell':
      return [section.startDiameterMm, section.endDiameterMm]
    case 'profile':
      return [section.points[0]?.[1] ?? null, section.points.at(-1)?.[1] ?? null]
  }
}
