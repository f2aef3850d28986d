import { plainNoteName, type Spelling } from '#shared/pitch/noteName.ts'
import { writtenMidi } from '#shared/pitch/transposition.ts'
import type { Column, Table } from '#shared/table/table.ts'
import type { LoopInCompany } from '#shared/tubing/loopInCompany.ts'
import type { HarmonicRow, SoundedNote } from '#shared/tuning/harmonicSeries.ts'
import type { TubeRuler } from '#shared/tuning/tubeRuler.ts'
import type { CompanyRow } from '../pictures/company/companyRows.ts'
import { companyWords, harmonicWords, rulerWords } from '../words/pictures.ts'
import { headings } from '../words/tableHeadings.ts'
import { centsColumn, type LengthUnit, lengthCell, lengthColumn } from './lengthCell.ts'

const hzColumn: Column = { heading: headings.frequency, unit: 'Hz' }

/** The harmonic series against the scale, a row a harmonic. */
export function harmonicsTable(design: string, rows: readonly HarmonicRow[], spelling: Spelling): Table {
  const { columns, tableOf } = harmonicWords
  return {
    title: tableOf(design),
    columns: [
      { heading: columns.harmonic },
      hzColumn,
      centsColumn(headings.aboveFundamental),
      centsColumn(headings.fromScale),
      { heading: columns.note },
      centsColumn(headings.fromNote),
    ],
    rows: rows.map(({ harmonic, hz, intervalCents, centsFromScale, midi, errorCents }) => [
      harmonic,
      hz,
      intervalCents,
      centsFromScale,
      plainNoteName(midi, spelling),
      errorCents,
    ]),
  }
}

/** The tube ruler, a row a fingering. */
export function rulerTable(design: string, ruler: TubeRuler, unit: LengthUnit): Table {
  const { columns, tableOf } = rulerWords
  return {
    title: tableOf(design),
    columns: [
      { heading: columns.fingering },
      { heading: columns.semitones },
      { heading: columns.loops },
      lengthColumn(columns.has, unit),
      lengthColumn(columns.needs, unit),
      lengthColumn(columns.missing, unit),
      centsColumn(headings.error),
    ],
    rows: ruler.rows.map((row) => [
      row.fingering,
      row.semitones,
      row.pieces.map(({ name }) => name).join('; '),
      lengthCell(row.lengthMm, unit),
      lengthCell(row.requiredLengthMm, unit),
      lengthCell(row.missingMm, unit),
      row.errorCents,
    ]),
  }
}

/** The steps to a fingering, a row for each set of valves. */
export function companyTable(fingering: string, rows: readonly CompanyRow[], unit: LengthUnit): Table {
  const { columns, tableOf } = companyWords
  return {
    title: tableOf(fingering),
    columns: [
      { heading: columns.step },
      lengthColumn(columns.has, unit),
      lengthColumn(columns.needs, unit),
      lengthColumn(columns.missing, unit),
      centsColumn(headings.error),
    ],
    rows: rows.map(({ name, lengthMm, requiredLengthMm, errorCents }) => [
      name,
      lengthCell(lengthMm, unit),
      lengthCell(requiredLengthMm, unit),
      lengthCell(requiredLengthMm - lengthMm, unit),
      errorCents,
    ]),
  }
}

/** A loop after every semitone, a row a semitone. */
export function growthTable(valve: string, rows: readonly LoopInCompany[], unit: LengthUnit): Table {
  const { columns, tableOf } = companyWords.growth
  return {
    title: tableOf(valve),
    columns: [
      { heading: columns.lowered },
      lengthColumn(columns.needs, unit),
      lengthColumn(columns.missing, unit),
      centsColumn(headings.error),
    ],
    rows: rows.map(({ loweredSemitones, neededMm, missingMm, errorCents }) => [
      loweredSemitones,
      lengthCell(neededMm, unit),
      lengthCell(missingMm, unit),
      errorCents,
    ]),
  }
}

/** The notes of one route, a row a harmonic. */
export function soundedTable(
  title: string,
  notes: readonly SoundedNote[],
  transposition: number,
  spelling: Spelling,
): Table {
  return {
    title,
    columns: [
      { heading: headings.harmonic },
      { heading: headings.sounds },
      { heading: headings.written },
      hzColumn,
      centsColumn(headings.error),
    ],
    rows: notes.map(({ harmonic, midi, hz, errorCents }) => [
      harmonic,
      plainNoteName(midi, spelling),
      plainNoteName(writtenMidi(midi, transposition), spelling),
      hz,
      errorCents,
    ]),
  }
}
