import type { LengthsRequest } from '#shared/solve/designProblem.ts'
import type { LengthObjective } from '#shared/solve/lengthProblem.ts'
import { type Form, formOf } from '../form.ts'
import { oneFile } from '../oneFile.ts'
import type { OptionKinds, Options } from '../options.ts'
import { type Result, refused } from '../outcome.ts'

/** What `lengths` can be asked. */
export interface Question {
  readonly file: string
  readonly designId: string
  readonly request: LengthsRequest
  readonly form: Form
}

export const questionKinds: OptionKinds = {
  design: 'value',
  free: 'value',
  'open-free': 'flag',
  'leave-out': 'value',
  objective: 'value',
  json: 'flag',
  csv: 'flag',
}

const objectives: readonly LengthObjective[] = ['rms', 'largest']

/** Reads the question out of a command line that has been taken apart. */
export function readQuestion({ files, flags, values }: Options): Result<Question> {
  const file = oneFile(files)
  if (!file.ok) return file
  const form = formOf(flags)
  if (!form.ok) return form
  const designId = values.get('design')
  if (designId === undefined) return refused('found no --design, expected the id of a design')
  const named = values.get('objective') ?? 'rms'
  const objective = objectives.find((each) => each === named)
  if (objective === undefined)
    return refused(`--objective: found ${named}, expected ${objectives.join(', ')}`)
  const openFree = flags.has('open-free')
  if (!values.has('free') && !openFree) {
    return refused('found neither --free nor --open-free, expected loops, the open route or both')
  }
  if (values.get('free')?.trim() === '') return refused('--free: found nothing, expected ids of loops')
  const request = {
    free: listed(values.get('free')),
    openFree,
    leaveOut: listed(values.get('leave-out')),
    objective,
  }
  return { ok: true, value: { file: file.value, designId, request, form: form.value } }
}

/** The names between the commas; an empty one stays, to be refused as the name that it is not. */
function listed(text: string | undefined): readonly string[] {
  return text === undefined ? [] : text.split(',').map((name) => name.trim())
}
