import type { BenchRecord } from '#shared/workbook/benchRecord.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { type Cell, csvTables } from '../csvTables.ts'
import { errorsInOrder } from './errorsInOrder.ts'
import { readRows } from './readRows.ts'

/** A table: its headings with their units, and its rows. Numbers are unrounded. */
interface Table {
  readonly headings: readonly string[]
  readonly rows: readonly (readonly Cell[])[]
}

/** The bench as comma-separated values: tables under their own headings, an empty line between two. */
export function benchCsv(record: BenchRecord, workbook: Workbook): string {
  const tables = [
    slides(record),
    cuts(record),
    loops(record),
    readings(record, workbook),
    changes(record),
    errors(record, workbook),
  ]
  return csvTables(tables.map(({ headings, rows }) => [headings, ...rows]))
}

function slides({ slides: all }: BenchRecord): Table {
  return {
    headings: [
      'slide',
      'loop wanted (mm of tube)',
      'bow (mm)',
      'straight end (mm)',
      'inner leg (mm)',
      'engaged at full travel (mm)',
      'cents per mm out',
      'mass (g)',
      'flat end (cents)',
      'sharp end (cents)',
      'problems',
    ],
    rows: all.map((slide) => [
      slide.id,
      slide.targetMm,
      slide.bowMm,
      slide.straightEndMm,
      slide.innerLegMm,
      slide.engagedAtTravelMm,
      slide.centsPerMmOut,
      slide.massG,
      slide.rangeCents?.[0] ?? null,
      slide.rangeCents?.[1] ?? null,
      slide.problems.map(({ message }) => message).join(' '),
    ]),
  }
}

function cuts({ slides: all }: BenchRecord): Table {
  return {
    headings: ['slide', 'part', 'count', 'finished (mm)', 'first cut (mm)'],
    rows: all.flatMap(({ id, cuts: pieces }) =>
      pieces.map(({ part, count, finishedMm, cutMm }) => [id, part, count, finishedMm, cutMm]),
    ),
  }
}

function loops({ readings: all }: BenchRecord): Table {
  return {
    headings: [
      'readings',
      'part',
      'length (mm of tube)',
      'standard error (mm)',
      'change (mm of tube)',
      'slide movement (mm)',
    ],
    rows: all.flatMap(({ id, openLengthMm, loops: found }) => [
      [id, 'open', openLengthMm?.value ?? null, openLengthMm?.standardError ?? null, null, null],
      ...Object.entries(found).map(([loop, { value, standardError, changeMm, movementMm }]) => [
        id,
        loop,
        value,
        standardError,
        changeMm,
        movementMm,
      ]),
    ]),
  }
}

function readings({ readings: all }: BenchRecord, workbook: Workbook): Table {
  const rows = all.flatMap(({ id, residualsCents }, i) =>
    readRows(workbook, i).map(({ fingering, harmonic, cents, leaveOut }, row) => [
      id,
      fingering,
      harmonic,
      cents,
      residualsCents[row] ?? null,
      leaveOut !== true,
    ]),
  )
  return {
    headings: ['readings', 'fingering', 'harmonic', 'read (cents)', 'left by the fit (cents)', 'used'],
    rows,
  }
}

function changes({ pitchChanges: all }: BenchRecord): Table {
  return {
    headings: ['change of pitch', 'part', 'add (mm of tube)', 'add per leg (mm)', 'already in the body’s'],
    rows: all.flatMap(({ id, bodyMm, loops: added, loopsInBody }) => [
      [id, 'body', bodyMm, bodyMm === null ? null : bodyMm / 2, false],
      ...Object.entries(added).map(([loop, tubeMm]) => [
        id,
        loop,
        tubeMm,
        tubeMm / 2,
        loopsInBody?.includes(loop) === true,
      ]),
    ]),
  }
}

function errors({ pitchChanges: all }: BenchRecord, workbook: Workbook): Table {
  return {
    headings: ['change of pitch', 'fingering', 'error if only the body is changed (cents)'],
    rows: all.flatMap((change, i) =>
      errorsInOrder(workbook, i, change).map(([fingering, cents]) => [change.id, fingering, cents]),
    ),
  }
}
