import { plainNoteName, type Spelling } from '../pitch/noteName.ts'
import { isSameWay } from '../tuning/candidates.ts'
import type { Combination } from '../tuning/combinations.ts'
import type { Note } from '../tuning/notes.ts'
import { type TuningTables, tuningTables } from '../tuning/tables.ts'
import { instrumentOf } from './instrumentOf.ts'
import { airWarnings, designWarnings } from './sanity/sanityWarnings.ts'
import type { Warning } from './sanity/warning.ts'
import type { Design, Workbook } from './workbook.ts'

/** The record of the headless `tables` command. Numbers are unrounded. */
export interface TablesRecord {
  readonly designs: readonly DesignRecord[]
  readonly warnings: readonly Warning[]
}

/** One design in the record of `tables`: lengths in mm, errors in cents, sharp positive. */
export interface DesignRecord {
  readonly id: string
  readonly name: string
  /** Effective open length as designed, mm. */
  readonly openLengthMm: number
  /** In the design's air, m/s. */
  readonly speedOfSound: number
  readonly combinations: readonly Combination[]
  readonly notes: readonly NoteRecord[]
  readonly summary: {
    readonly rmsCents: number
    /** Signed, sharp positive: the error of `largestFingering`. */
    readonly largestCents: number
    readonly largestFingering: string
    readonly tubeMm: number
    readonly loops: number
  }
}

/** One note of a design in the record of `tables`, with every way to play it. */
export interface NoteRecord {
  readonly midi: number
  readonly sounding: string
  readonly written: string
  readonly targetHz: number
  readonly candidates: readonly {
    readonly fingering: string
    readonly harmonic: number
    readonly hz: number
    readonly errorCents: number
    readonly usual: boolean
  }[]
}

/** All tables and warnings of a workbook. */
export function tablesRecord(workbook: Workbook, spelling: Spelling = 'flats'): TablesRecord {
  const derived = workbook.designs.map((design) => tuningTables(instrumentOf(workbook, design)))
  return {
    designs: workbook.designs.map((design, i) => designRecord(workbook, design, derived[i]!, spelling)),
    warnings: [
      ...airWarnings(workbook.air),
      ...workbook.designs.flatMap((design, i) => designWarnings(design, derived[i]!, i)),
    ],
  }
}

function designRecord(
  workbook: Workbook,
  design: Design,
  tables: TuningTables,
  spelling: Spelling,
): DesignRecord {
  const { byFingering, tubeMm, loops } = tables.summary
  return {
    id: design.id,
    name: design.name,
    openLengthMm: tables.mainSlide.nominalOpenMm,
    speedOfSound: instrumentOf(workbook, design).speedOfSoundMps,
    combinations: tables.combinations,
    notes: tables.notes.map((note) => noteRecord(note, spelling)),
    summary: {
      rmsCents: byFingering.rmsCents,
      largestCents: byFingering.largestCents,
      largestFingering: byFingering.largestAt ?? '',
      tubeMm,
      loops,
    },
  }
}

function noteRecord(note: Note, spelling: Spelling): NoteRecord {
  return {
    midi: note.midi,
    sounding: plainNoteName(note.midi, spelling),
    written: plainNoteName(note.writtenMidi, spelling),
    targetHz: note.targetHz,
    candidates: note.candidates().map((candidate) => ({
      fingering: candidate.fingering,
      harmonic: candidate.harmonic,
      hz: candidate.hz,
      errorCents: candidate.errorCents,
      usual: isSameWay(candidate, note.usual),
    })),
  }
}
