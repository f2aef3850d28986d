import { plainNoteName, type Spelling } from '#shared/pitch/noteName.ts'
import type { Cell, Table } from '#shared/table/table.ts'
import type { Spread, Summary } from '#shared/tuning/summary.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { headings, titles, comparisonFigures as words } from '../words/tableHeadings.ts'
import { type LengthUnit, lengthCell } from './lengthCell.ts'

interface Row {
  readonly figure: string
  readonly unit: string
  readonly of: (summary: Summary) => Cell
}

/** The comparison: a row a figure, with its unit, and a column a design. */
export function comparisonTable(
  all: readonly DerivedDesign[],
  unit: LengthUnit,
  spelling: Spelling,
  nameOf: typeof plainNoteName = plainNoteName,
): Table {
  return {
    title: titles.comparison,
    columns: [
      { heading: headings.figure },
      { heading: headings.unit },
      ...all.map(({ design }) => ({ heading: design.name })),
    ],
    rows: rowsOf(unit, (midi) => nameOf(midi, spelling)).map(({ figure, unit: of, of: value }) => [
      figure,
      of,
      ...all.map(({ tables }) => value(tables.summary)),
    ]),
  }
}

function rowsOf(unit: LengthUnit, nameOf: (midi: number) => string): readonly Row[] {
  const row = (figure: string, of: Row['of'], its = ''): Row => ({ figure, unit: its, of })
  return [
    row(words.rms, ({ byFingering }) => byFingering.rmsCents, 'cents'),
    row(words.largest, ({ byFingering }) => byFingering.largestCents, 'cents'),
    row(words.largestAt, ({ byFingering }) => placeOf(byFingering)),
    row(words.steps, ({ byFingering }) => byFingering.count),
    row(words.noteRms, ({ byNote }) => byNote.rmsCents, 'cents'),
    row(words.noteLargest, ({ byNote }) => byNote.largestCents, 'cents'),
    row(words.noteLargestAt, ({ byNote }) => {
      const midi = placeOf(byNote)
      return midi === null ? null : nameOf(midi)
    }),
    row(words.notes, ({ byNote }) => byNote.count),
    row(words.body, ({ bodyMm }) => lengthCell(bodyMm, unit), unit),
    row(words.loopsTogether, ({ loopsMm }) => lengthCell(loopsMm, unit), unit),
    row(words.allTube, ({ tubeMm }) => lengthCell(tubeMm, unit), unit),
    row(words.loops, ({ loops }) => loops),
    row(words.mostLoops, ({ mostLoopsInRoute }) => mostLoopsInRoute),
  ]
}

/** Where the largest error is; nowhere when it would show as none. */
function placeOf<At>({ largestCents, largestAt }: Spread<At>): At | null {
  return Math.abs(largestCents) < 0.05 ? null : largestAt
}

/** Loops in the route of each usual fingering, a row each. */
export function loopsInRoutesTable(all: readonly DerivedDesign[]): Table {
  return {
    title: titles.loopsInRoutes,
    columns: [{ heading: headings.design }, { heading: headings.fingering }, { heading: headings.inRoute }],
    rows: all.flatMap(({ design, tables }) =>
      Object.entries(tables.summary.loopsInRoute).map(([fingering, count]) => [
        design.name,
        fingering,
        count,
      ]),
    ),
  }
}
