import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import type {
  BenchPitchChangeRecord,
  BenchReadingsRecord,
  BenchRecord,
  BenchSlideRecord,
} from '#shared/workbook/benchRecord.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { alignedTable, type Column } from '../alignedTable.ts'
import { shown, shownLine } from '../shown.ts'
import { errorsInOrder } from './errorsInOrder.ts'
import { readRows } from './readRows.ts'

/** The bench for reading: each job under its name, what speaks against it first. */
export function benchText({ slides, readings, pitchChanges }: BenchRecord, workbook: Workbook): string {
  const parts = [
    ...slides.map(slideText),
    ...readings.map((each, i) => readingsText(each, workbook, i)),
    ...pitchChanges.map((each, i) => changeText(each, workbook, i)),
  ]
  return parts.length === 0 ? 'Nothing on the bench.\n' : parts.join('\n')
}

const figureColumns: readonly Column[] = [
  { heading: 'figure', align: 'left' },
  { heading: 'value', align: 'right' },
  { heading: 'unit', align: 'left' },
]

function slideText(slide: BenchSlideRecord): string {
  const { rangeCents } = slide
  const rows = [
    ['loop wanted', slide.targetMm, 1, 'mm of tube'],
    ['bow, curve alone', slide.bowMm, 1, 'mm of tube'],
    ['each straight end', slide.straightEndMm, 1, 'mm'],
    ['each inner leg', slide.innerLegMm, 1, 'mm'],
    ['engaged at full travel', slide.engagedAtTravelMm, 1, 'mm'],
    ['first mm of movement out', slide.centsPerMmOut, 2, 'cents'],
    ['mass of what moves', slide.massG, 1, 'g'],
  ] as const
  const figures = rows.flatMap(([name, value, decimals, unit]) =>
    value === null ? [] : [[name, plainFigure(value, decimals), unit]],
  )
  const range =
    rangeCents === null
      ? []
      : [['range', rangeCents.map((cents) => signedCents(cents)).join(' to '), 'cents']]
  const all = [...figures, ...range]
  return [
    `Slide ${shown(slide.id)}\n`,
    ...slide.problems.map(({ message }) => `Problem: ${shownLine(message)}\n`),
    ...(all.length === 0 ? [] : [alignedTable(figureColumns, all)]),
    ...(slide.cuts.length === 0 ? [] : [cutTable(slide)]),
  ].join('')
}

const cutColumns: readonly Column[] = [
  { heading: 'part', align: 'left' },
  { heading: 'count', align: 'right' },
  { heading: 'finished mm', align: 'right' },
  { heading: 'first cut mm', align: 'right' },
]

function cutTable({ cuts }: BenchSlideRecord): string {
  const rows = cuts.map(({ part, count, finishedMm, cutMm }) => [
    part,
    String(count),
    plainFigure(finishedMm, 1),
    plainFigure(cutMm, 1),
  ])
  return alignedTable(cutColumns, rows)
}

const partColumns: readonly Column[] = [
  { heading: 'part', align: 'left' },
  { heading: 'mm of tube', align: 'right' },
  { heading: '±', align: 'right' },
  { heading: 'change, tube', align: 'right' },
  { heading: 'slide movement', align: 'right' },
]

const readingColumns: readonly Column[] = [
  { heading: 'fingering', align: 'left' },
  { heading: 'harmonic', align: 'right' },
  { heading: 'read cents', align: 'right' },
  { heading: 'left cents', align: 'right' },
  { heading: '', align: 'left' },
]

function readingsText(record: BenchReadingsRecord, workbook: Workbook, index: number): string {
  const { openLengthMm, loops, residualsCents } = record
  const open =
    openLengthMm === null
      ? []
      : [['open', plainFigure(openLengthMm.value, 1), plainFigure(openLengthMm.standardError, 1), '', '']]
  const parts = Object.entries(loops).map(([id, { value, standardError, changeMm, movementMm }]) => [
    id,
    plainFigure(value, 1),
    plainFigure(standardError, 1),
    changeMm === null ? '' : plainFigure(changeMm, 1),
    movementMm === null ? '' : plainFigure(movementMm, 1),
  ])
  const rows = readRows(workbook, index).map((row, i) => [
    row.fingering,
    String(row.harmonic),
    signedCents(row.cents),
    residualsCents[i] === undefined ? '' : signedCents(residualsCents[i]),
    row.leaveOut === true ? 'left out' : '',
  ])
  return [
    `Readings ${shown(record.id)}\n`,
    ...record.remarks.map(({ message }) => `Remark: ${shownLine(message)}\n`),
    ...(open.length + parts.length === 0 ? [] : [alignedTable(partColumns, [...open, ...parts])]),
    ...(rows.length === 0 ? [] : [alignedTable(readingColumns, rows)]),
  ].join('')
}

const changeColumns: readonly Column[] = [
  { heading: 'part', align: 'left' },
  { heading: 'add, mm of tube', align: 'right' },
  { heading: 'add per leg, mm', align: 'right' },
  { heading: '', align: 'left' },
]

const errorColumns: readonly Column[] = [
  { heading: 'fingering', align: 'left' },
  { heading: 'cents if only the body is changed', align: 'right' },
]

function changeText(record: BenchPitchChangeRecord, workbook: Workbook, index: number): string {
  const { id, bodyMm, loops, loopsInBody } = record
  const heading = `Change of pitch ${shown(id)}\n`
  if (bodyMm === null) return `${heading}Problem: its design is not in this workbook.\n`
  const row = (part: string, tubeMm: number, remark: string) => [
    part,
    plainFigure(tubeMm, 1),
    plainFigure(tubeMm / 2, 1),
    remark,
  ]
  const added = [
    row('body', bodyMm, ''),
    ...Object.entries(loops).map(([id, tubeMm]) =>
      row(id, tubeMm, loopsInBody?.includes(id) === true ? 'already in the body’s' : ''),
    ),
  ]
  const errors = errorsInOrder(workbook, index, record).map(([name, cents]) => [name, signedCents(cents)])
  return [heading, alignedTable(changeColumns, added), alignedTable(errorColumns, errors)].join('')
}
