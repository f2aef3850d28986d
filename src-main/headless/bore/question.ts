import type { OptionKinds, Options } from '../options.ts'
import { type Result, refused } from '../outcome.ts'

/** What `bore` can be asked. */
export interface Question {
  readonly file: string
  readonly designId: string | undefined
  readonly fingering: string | undefined
  readonly form: 'text' | 'json' | 'csv'
}

export const questionKinds: OptionKinds = { design: 'value', fingering: 'value', json: 'flag', csv: 'flag' }

/** Reads the question out of a command line that has been taken apart. */
export function readQuestion({ files, flags, values }: Options): Result<Question> {
  const [file] = files
  if (file === undefined) return refused('found no file, expected one design file')
  if (files.length > 1) return refused(`found ${files.length} files, expected one design file`)
  if (flags.has('json') && flags.has('csv'))
    return refused('found both --json and --csv, expected one of them')
  const form = flags.has('json') ? 'json' : flags.has('csv') ? 'csv' : 'text'
  const question = { file, designId: values.get('design'), fingering: values.get('fingering'), form } as const
  return { ok: true, value: question }
}
