import { type Form, formOf } from '../form.ts'
import { oneFile } from '../oneFile.ts'
import type { OptionKinds, Options } from '../options.ts'
import type { Result } from '../outcome.ts'

/** What `bore` can be asked. */
export interface Question {
  readonly file: string
  readonly designId: string | undefined
  readonly fingering: string | undefined
  readonly form: Form
}

export const questionKinds: OptionKinds = { design: 'value', fingering: 'value', json: 'flag', csv: 'flag' }

/** Reads the question out of a command line that has been taken apart. */
export function readQuestion({ files, flags, values }: Options): Result<Question> {
  const file = oneFile(files)
  if (!file.ok) return file
  const form = formOf(flags)
  if (!form.ok) return form
  const question = { file: file.value, designId: values.get('design'), fingering: values.get('fingering') }
  return { ok: true, value: { ...question, form: form.value } }
}
