import { benchRecord } from '#shared/workbook/benchRecord.ts'
import { benchWarnings } from '#shared/workbook/sanity/benchWarnings.ts'
import { type Form, formOf } from '../form.ts'
import { oneFile } from '../oneFile.ts'
import { type Options, readOptions } from '../options.ts'
import type { Command, Outcome, Result } from '../outcome.ts'
import { readWorkbookFile } from '../readWorkbookFile.ts'
import { benchCsv } from './benchCsv.ts'
import { benchText } from './benchText.ts'

/** `ferrule bench`: slides, readings and changes of pitch that a file keeps, worked out. */
export const bench: Command = {
  usage: 'bench FILE [--json | --csv]',
  run: (args) => {
    const options = readOptions(args, { json: 'flag', csv: 'flag' })
    const asked = options.ok ? readQuestion(options.value) : options
    return asked.ok ? answer(asked.value) : { kind: 'refused', reason: asked.reason }
  },
}

interface Question {
  readonly file: string
  readonly form: Form
}

function readQuestion({ files, flags }: Options): Result<Question> {
  const file = oneFile(files, 'a design file')
  if (!file.ok) return file
  const form = formOf(flags)
  if (!form.ok) return form
  return { ok: true, value: { file: file.value, form: form.value } }
}

function answer({ file, form }: Question): Outcome {
  const workbook = readWorkbookFile(file)
  if (!workbook.ok) return { kind: 'refused', reason: workbook.reason }
  const record = benchRecord(workbook.value)
  const forms = {
    json: () => `${JSON.stringify(record, null, 2)}\n`,
    csv: () => benchCsv(record, workbook.value),
    text: () => benchText(record, workbook.value),
  }
  const remarks = benchWarnings(workbook.value).map(({ path, message }) => `Warning: ${path}: ${message}`)
  return { kind: 'done', output: forms[form](), remarks }
}
