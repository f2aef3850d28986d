import type { FromOnePiece } from '#shared/bench/fromOnePiece.ts'
import type { ReadingContext } from '#shared/bench/readings/placeReading.ts'
import type { ReadingsFit } from '#shared/bench/readings/readingsFit.ts'
import { type Cut, tubeToOrderMm } from '#shared/bench/slide/cuts.ts'
import { plainNoteName, type Spelling } from '#shared/pitch/noteName.ts'
import type { Table } from '#shared/table/table.ts'
import { fingeringName } from '#shared/valves/fingering.ts'
import { loopNamed } from '#shared/valves/loop.ts'
import type { BenchReadings } from '#shared/workbook/bench.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import type { ChangeRow } from '../bench/pitch/changeRows.ts'
import { cutsAreHeld } from '../bench/readings/answerRows.ts'
import { noteOf } from '../bench/readings/typedReading.ts'
import { headings, titles } from '../words/tableHeadings.ts'
import { centsColumn, type LengthUnit, lengthCell, lengthCellOrNone, lengthColumn } from './lengthCell.ts'

/** The readings as typed, and what the fit leaves of each. */
export function readingsTable(
  { id, rows }: BenchReadings,
  context: ReadingContext,
  fit: ReadingsFit | null,
  spelling: Spelling,
): Table {
  return {
    title: titles.readings(id),
    columns: [
      { heading: headings.fingering },
      { heading: headings.harmonic },
      { heading: headings.note },
      centsColumn(headings.read),
      centsColumn(headings.leftOver),
      { heading: headings.inFit },
    ],
    rows: rows.map((reading, row) => [
      fingeringName(reading.pressed),
      reading.harmonic,
      plainNoteName(noteOf(reading, context), spelling),
      reading.cents,
      fit?.residualsCents[row] ?? null,
      reading.leaveOut === true ? headings.no : headings.yes,
    ]),
  }
}

/** What the readings say of the open length and of every loop, with standard errors. */
export function fitTable(id: string, fit: ReadingsFit, design: Design, unit: LengthUnit): Table {
  const open = fit.openLengthMm
  const isHeld = cutsAreHeld(fit)
  const names = [
    headings.tube,
    headings.standardError,
    headings.wanted,
    headings.firstCut,
    headings.add,
    headings.moveOut,
  ] as const
  const row = (part: string, lengths: readonly (number | null | undefined)[]) => [
    part,
    ...lengths.map((mm) => lengthCellOrNone(mm, unit)),
  ]
  return {
    title: titles.fit(id),
    columns: [{ heading: headings.part }, ...names.map((heading) => lengthColumn(heading, unit))],
    rows: [
      row(headings.openLength, [open?.value, open?.standardError, null, null, null, null]),
      ...Object.entries(fit.loops).map(([loopId, loop]) =>
        row(loopNamed(design.loops, loopId), [
          loop.value,
          loop.standardError,
          ...(isHeld
            ? [null, null, null, null]
            : [loop.targetMm, loop.firstCutMm, loop.changeMm, loop.movementMm]),
        ]),
      ),
    ],
  }
}

/** What body and every loop need for another pitch. */
export function changeOfPitchTable(id: string, rows: readonly ChangeRow[], unit: LengthUnit): Table {
  const names = [headings.now, headings.add, headings.addLeg, headings.tubeThen]
  return {
    title: titles.pitch(id),
    columns: [{ heading: headings.part }, ...names.map((heading) => lengthColumn(heading, unit))],
    rows: rows.map(({ part, nowMm, tubeMm, perLegMm, thenMm }) => [
      part,
      ...[nowMm, tubeMm, perLegMm, thenMm].map((mm) => lengthCell(mm, unit)),
    ]),
  }
}

/** The pieces of a slide, finished and at the first cut. */
export function cutsTable(id: string, cuts: readonly Cut[], unit: LengthUnit): Table {
  return {
    title: titles.cuts(id),
    columns: [
      { heading: headings.piece },
      { heading: headings.number },
      lengthColumn(headings.finished, unit),
      lengthColumn(headings.firstCut, unit),
    ],
    rows: [
      ...cuts.map(({ part, count, finishedMm, cutMm }) => [
        part,
        count,
        lengthCell(finishedMm, unit),
        lengthCell(cutMm, unit),
      ]),
      [headings.toOrder, null, null, lengthCell(tubeToOrderMm(cuts), unit)],
    ],
  }
}

/** Each valve's loop taken alone, from one measured piece, and the one that the design has. */
export function onePieceTable(
  { valves }: Design,
  { loopsMm }: FromOnePiece,
  inDesignMm: (valveId: string) => number | undefined,
  unit: LengthUnit,
): Table {
  return {
    title: titles.onePiece,
    columns: [
      { heading: headings.valve },
      { heading: headings.semitones },
      lengthColumn(headings.tube, unit),
      lengthColumn(headings.inDesign, unit),
    ],
    rows: valves.map(({ id, semitones }) => [
      id,
      semitones,
      lengthCellOrNone(loopsMm[id], unit),
      lengthCellOrNone(inDesignMm(id), unit),
    ]),
  }
}
