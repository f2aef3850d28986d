import { type TuningTables, tuningTables } from '#shared/tuning/tables.ts'
import { instrumentOf } from '#shared/workbook/instrumentOf.ts'
import type { Warning } from '#shared/workbook/sanity/warning.ts'
import { type DesignRecord, type TablesRecord, tablesRecord } from '#shared/workbook/tablesRecord.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { type Form, formOf } from '../form.ts'
import { type Options, readOptions } from '../options.ts'
import { type Command, type Outcome, type Result, refused } from '../outcome.ts'
import { readWorkbookFile } from '../readWorkbookFile.ts'
import { tablesCsv } from './tablesCsv.ts'
import { tablesText } from './tablesText.ts'

/** The tables that `--show` can name. */
export const shownTables = ['combinations', 'notes', 'summary'] as const
export type ShownTable = (typeof shownTables)[number]

/** One design as the record has it, with the tables it was made from, which know choices and spreads too. */
export interface DesignTables {
  readonly record: DesignRecord
  readonly tables: TuningTables
}

/** `ferrule tables`: combination, note and summary tables of every design in some files. */
export const tables: Command = {
  usage: `tables FILE… [--show ${shownTables.join('|')}] [--json | --csv]`,
  run: (args) => {
    const options = readOptions(args, { show: 'value', json: 'flag', csv: 'flag' })
    const asked = options.ok ? readQuestion(options.value) : options
    if (!asked.ok) return { kind: 'refused', reason: asked.reason }
    const contents = readContents(asked.value.files)
    return contents.ok ? answer(asked.value, contents.value) : { kind: 'refused', reason: contents.reason }
  },
}

interface Question {
  readonly files: readonly string[]
  readonly show: readonly ShownTable[]
  readonly form: Form
}

interface Contents {
  readonly designs: readonly DesignTables[]
  readonly warnings: readonly Warning[]
}

function readQuestion({ files, flags, values }: Options): Result<Question> {
  if (files.length === 0) return refused('found no file, expected at least one design file')
  const form = formOf(flags)
  if (!form.ok) return form
  const named = values.get('show')
  const show = named === undefined ? shownTables : shownTables.filter((table) => table === named)
  if (show.length === 0) return refused(`--show: found ${named}, expected ${shownTables.join(', ')}`)
  return { ok: true, value: { files, show, form: form.value } }
}

function readContents(files: readonly string[]): Result<Contents> {
  const designs: DesignTables[] = []
  const warnings: Warning[] = []
  for (const file of files) {
    const workbook = readWorkbookFile(file)
    if (!workbook.ok) return workbook
    const record = tablesRecord(workbook.value)
    designs.push(...designTables(workbook.value, record))
    warnings.push(...(files.length > 1 ? record.warnings.map((each) => ofFile(file, each)) : record.warnings))
  }
  return { ok: true, value: { designs, warnings } }
}

function designTables(workbook: Workbook, { designs }: TablesRecord): readonly DesignTables[] {
  return workbook.designs.map((design, i) => ({
    record: designs[i]!,
    tables: tuningTables(instrumentOf(workbook, design)),
  }))
}

function ofFile(file: string, warning: Warning): Warning {
  return { ...warning, path: `${file}: ${warning.path}` }
}

function answer({ show, form }: Question, { designs, warnings }: Contents): Outcome {
  if (form === 'json') {
    const record = { designs: designs.map((design) => shownPart(design.record, show)), warnings }
    return { kind: 'done', output: `${JSON.stringify(record, null, 2)}\n`, remarks: [] }
  }
  const output = form === 'csv' ? tablesCsv(designs, show) : tablesText(designs, show)
  return {
    kind: 'done',
    output,
    remarks: warnings.map(({ path, message }) => `Warning: ${path}: ${message}`),
  }
}

/** The record without the tables that were not asked for. */
function shownPart(record: DesignRecord, show: readonly ShownTable[]): Partial<DesignRecord> {
  const left = Object.entries(record).filter(
    ([key]) => show.some((table) => table === key) || !shownTables.some((table) => table === key),
  )
  return Object.fromEntries(left)
}
