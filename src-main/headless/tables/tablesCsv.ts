import { plainNoteName } from '#shared/pitch/noteName.ts'
import { type Candidate, isSameWay } from '#shared/tuning/candidates.ts'
import type { Note } from '#shared/tuning/notes.ts'
import { type Cell, csvTables } from '../csvTables.ts'
import type { DesignTables, ShownTable } from './tables.ts'

/** A table of each kind: its headings with their units, and a design's rows. Numbers are unrounded. */
const kinds: Readonly<
  Record<
    ShownTable,
    {
      readonly headings: readonly string[]
      readonly rows: (design: DesignTables) => readonly (readonly Cell[])[]
    }
  >
> = {
  combinations: {
    headings: [
      'design',
      'fingering',
      'semitones',
      'loops',
      'length (mm)',
      'required length (mm)',
      'error (cents)',
    ],
    rows: ({ record, tables }) =>
      tables.combinations.map((row) => [
        record.id,
        row.fingering,
        row.semitones,
        row.loops.join('; '),
        row.lengthMm,
        row.requiredLengthMm,
        row.errorCents,
      ]),
  },
  notes: {
    headings: [
      'design',
      'midi',
      'sounding',
      'written',
      'target (Hz)',
      'fingering',
      'harmonic',
      'frequency (Hz)',
      'error (cents)',
      'usual',
      'nearest',
      'chosen',
    ],
    rows: ({ record, tables }) => tables.notes.flatMap((note) => noteRows(record.id, note)),
  },
  summary: {
    headings: [
      'design',
      'name',
      'rms (cents)',
      'largest (cents)',
      'largest fingering',
      'rms by note (cents)',
      'largest by note (cents)',
      'largest note',
      'tube (mm)',
      'loops',
    ],
    rows: ({ record, tables: { summary } }) => [
      [
        record.id,
        record.name,
        summary.byFingering.rmsCents,
        summary.byFingering.largestCents,
        summary.byFingering.largestAt,
        summary.byNote.rmsCents,
        summary.byNote.largestCents,
        summary.byNote.largestAt === null ? null : plainNoteName(summary.byNote.largestAt, 'flats'),
        summary.tubeMm,
        summary.loops,
      ],
    ],
  },
}

/** The tables as comma-separated values, each under its own headings, with an empty line between two tables. */
export function tablesCsv(designs: readonly DesignTables[], show: readonly ShownTable[]): string {
  return csvTables(show.map((table) => [kinds[table].headings, ...designs.flatMap(kinds[table].rows)]))
}

/** A row a candidate, and one without fingering for a note that nothing reaches. */
function noteRows(designId: string, note: Note): readonly (readonly Cell[])[] {
  const { midi, usual, nearest, chosen } = note
  const start = [designId, midi, plainNoteName(midi, 'flats'), plainNoteName(note.writtenMidi, 'flats')]
  const isChosen = (each: Candidate): boolean => isSameWay(each, chosen)
  const outside = chosen === null || note.candidates().some(isChosen) ? [] : [chosen]
  const ways = [...note.candidates(), ...outside]
  if (ways.length === 0) return [[...start, note.targetHz, null, null, null, null, false, false, false]]
  return ways.map((each) => [
    ...start,
    note.targetHz,
    each.fingering,
    each.harmonic,
    each.hz,
    each.errorCents,
    isSameWay(each, usual),
    isSameWay(each, nearest),
    isChosen(each),
  ])
}
