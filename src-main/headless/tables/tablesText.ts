import { noteName } from '#shared/pitch/noteName.ts'
import { briefFigure, plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { type Candidate, isSameWay } from '#shared/tuning/candidates.ts'
import { type Note, playedCandidate } from '#shared/tuning/notes.ts'
import { alignedTable, type Column } from '../alignedTable.ts'
import { shown } from '../shown.ts'
import type { DesignTables, ShownTable } from './tables.ts'

/** Other ways to play a note that a line still holds. */
const mostOthers = 5

/** The tables for reading: each design's own, then one line a design to compare them. */
export function tablesText(designs: readonly DesignTables[], show: readonly ShownTable[]): string {
  const own = designs.flatMap((design) => {
    const parts = [
      ...(show.includes('combinations') ? [`Combinations\n${combinations(design)}`] : []),
      ...(show.includes('notes') ? [`Notes\n${notes(design)}`] : []),
    ]
    return parts.length === 0 ? [] : [heading(design), ...parts]
  })
  const compared = show.includes('summary') ? [`Summary\n${summaries(designs)}`] : []
  return [...own, ...compared].join('\n')
}

function heading({ record: { id, name, openLengthMm, speedOfSound } }: DesignTables): string {
  const air = `open length ${plainFigure(openLengthMm, 1)} mm, speed of sound ${plainFigure(speedOfSound, 2)} m/s`
  return `${shown(name)} (${shown(id)}): ${air}\n`
}

const combinationColumns: readonly Column[] = [
  { heading: 'fingering', align: 'left' },
  { heading: 'semitones', align: 'right' },
  { heading: 'length mm', align: 'right' },
  { heading: 'required mm', align: 'right' },
  { heading: 'cents', align: 'right' },
  { heading: 'loops', align: 'left' },
]

/** Whole numbers as they are, others to two decimals. */
function semitoneText(semitones: number): string {
  return briefFigure(semitones, 2)
}

function combinations({ tables }: DesignTables): string {
  const rows = tables.combinations.map((row) => [
    row.fingering,
    semitoneText(row.semitones),
    plainFigure(row.lengthMm, 1),
    plainFigure(row.requiredLengthMm, 1),
    signedCents(row.errorCents),
    row.loops.join(', '),
  ])
  return alignedTable(combinationColumns, rows)
}

const noteColumns: readonly Column[] = [
  { heading: 'sounding', align: 'left' },
  { heading: 'written', align: 'left' },
  { heading: 'target Hz', align: 'right' },
  { heading: 'fingering', align: 'left' },
  { heading: 'harmonic', align: 'right' },
  { heading: 'cents', align: 'right' },
  { heading: 'taken', align: 'left' },
  { heading: 'others', align: 'left' },
]

function notes({ tables }: DesignTables): string {
  return alignedTable(noteColumns, tables.notes.map(noteRow))
}

/** A note with the fingering it is played with, how that was arrived at, and the other candidates. */
function noteRow(note: Note): readonly string[] {
  const played = playedCandidate(note)
  const start = [
    noteName(note.midi, 'flats'),
    noteName(note.writtenMidi, 'flats'),
    plainFigure(note.targetHz, 2),
  ]
  if (played === null) return [...start, 'none']
  const others = note.candidates().filter((candidate) => !isSameWay(candidate, played))
  const more = others.length > mostOthers ? `, and ${others.length - mostOthers} more` : ''
  return [
    ...start,
    played.fingering,
    String(played.harmonic),
    signedCents(played.errorCents),
    note.chosen !== null ? 'chosen' : note.usual !== null ? 'usual' : 'nearest',
    others.slice(0, mostOthers).map(wayText).join(', ') + more,
  ]
}

function wayText({ fingering, harmonic, errorCents }: Candidate): string {
  return `${fingering} on ${harmonic} (${signedCents(errorCents)})`
}

const summaryColumns: readonly Column[] = [
  { heading: 'design', align: 'left' },
  { heading: 'rms cents', align: 'right' },
  { heading: 'largest', align: 'right' },
  { heading: 'at', align: 'left' },
  { heading: 'by note, rms', align: 'right' },
  { heading: 'largest', align: 'right' },
  { heading: 'at', align: 'left' },
  { heading: 'tube mm', align: 'right' },
  { heading: 'loops', align: 'right' },
]

function summaries(designs: readonly DesignTables[]): string {
  const rows = designs.map(({ record, tables: { summary } }) => [
    record.name,
    plainFigure(summary.byFingering.rmsCents, 1),
    signedCents(summary.byFingering.largestCents),
    summary.byFingering.largestAt ?? '',
    plainFigure(summary.byNote.rmsCents, 1),
    signedCents(summary.byNote.largestCents),
    summary.byNote.largestAt === null ? '' : noteName(summary.byNote.largestAt, 'flats'),
    plainFigure(summary.tubeMm, 1),
    String(summary.loops),
  ])
  return alignedTable(summaryColumns, rows)
}
