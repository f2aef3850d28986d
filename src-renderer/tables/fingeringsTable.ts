import { plainNoteName, type Spelling } from '#shared/pitch/noteName.ts'
import type { Cell, Table } from '#shared/table/table.ts'
import { type Candidate, isSameWay } from '#shared/tuning/candidates.ts'
import type { Note } from '#shared/tuning/notes.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { headings, titles } from '../words/tableHeadings.ts'
import { centsColumn } from './lengthCell.ts'

/** The fingering chart: a row a candidate, from the lowest note up; a note that nothing reaches has a row of its own. */
export function fingeringsTable({ design, tables }: DerivedDesign, spelling: Spelling): Table {
  return {
    title: titles.fingeringChart(design.name),
    columns: [
      { heading: headings.sounds },
      { heading: headings.written },
      { heading: headings.target, unit: 'Hz' },
      { heading: headings.fingering },
      { heading: headings.harmonic },
      { heading: headings.frequency, unit: 'Hz' },
      centsColumn(headings.error),
      { heading: headings.mark },
    ],
    rows: tables.notes.flatMap((note) => noteRows(note, spelling)),
  }
}

function noteRows(note: Note, spelling: Spelling): readonly (readonly Cell[])[] {
  const start = [plainNoteName(note.midi, spelling), plainNoteName(note.writtenMidi, spelling), note.targetHz]
  const isListed = note.candidates().some((each) => isSameWay(each, note.chosen))
  const ways = note.chosen === null || isListed ? note.candidates() : [note.chosen, ...note.candidates()]
  if (ways.length === 0) return [[...start, null, null, null, null, null]]
  return ways.map((way) => [
    ...start,
    way.fingering,
    way.harmonic,
    way.hz,
    way.errorCents,
    marksOf(way, note).join(' '),
  ])
}

/** What is said beside a candidate. */
export function marksOf(way: Candidate, { usual, nearest, chosen }: Note): readonly string[] {
  const marks = [
    [usual, headings.usual],
    [nearest, headings.nearest],
    [chosen, headings.chosen],
  ] as const
  return marks.flatMap(([marked, mark]) => (isSameWay(way, marked) ? [mark] : []))
}
