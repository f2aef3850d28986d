import type { LengthRefusal } from '#shared/solve/lengthRefusal.ts'
import { type LengthsRecordAnswer, lengthsRecord } from '#shared/solve/lengthsRecord.ts'
import { tuningTables } from '#shared/tuning/tables.ts'
import { instrumentOf } from '#shared/workbook/instrumentOf.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { loadedHighs, loadHighs } from '../loadHighs.ts'
import { readOptions } from '../options.ts'
import { type Command, type Outcome, type Result, refused } from '../outcome.ts'
import { readWorkbookFile } from '../readWorkbookFile.ts'
import { lengthsCsv } from './lengthsCsv.ts'
import { lengthsText } from './lengthsText.ts'
import { type Question, questionKinds, readQuestion } from './question.ts'

/** `ferrule lengths`: the lengths of some free loops that make a design's errors least. */
export const lengths: Command = {
  usage:
    'lengths FILE --design ID [--free L1,L2,…] [--open-free] [--leave-out 3,1-3] [--objective rms|largest] [--json | --csv]',
  ready: loadHighs,
  run: (args) => {
    const options = readOptions(args, questionKinds)
    const asked = options.ok ? readQuestion(options.value) : options
    const found = asked.ok ? findDesign(asked.value) : asked
    if (!asked.ok) return { kind: 'refused', reason: asked.reason }
    if (!found.ok) return { kind: 'refused', reason: found.reason }
    return answer(asked.value, found.value)
  },
}

interface Found {
  readonly workbook: Workbook
  readonly design: Design
}

function findDesign({ file, designId }: Question): Result<Found> {
  const workbook = readWorkbookFile(file)
  if (!workbook.ok) return workbook
  const { designs } = workbook.value
  const design = designs.find(({ id }) => id === designId)
  if (design !== undefined) return { ok: true, value: { workbook: workbook.value, design } }
  const known = designs.length === 0 ? 'a workbook with designs' : designs.map(({ id }) => id).join(', ')
  return refused(`--design: found ${designId}, expected ${known}`)
}

function answer(question: Question, { workbook, design }: Found): Outcome {
  const { mainSlide, fingerings } = tuningTables(instrumentOf(workbook, design))
  const { valves, loops } = design
  const solved = lengthsRecord(
    {
      openLengthMm: mainSlide.inTuneOpenMm,
      openChangeMm: mainSlide.openMm - mainSlide.inTuneOpenMm,
      valves,
      loops,
      fingerings,
    },
    question.request,
    loadedHighs(),
  )
  if (solved.kind === 'none') return { kind: 'refused', reason: reasonOf(solved, question) }
  const { record } = solved
  const remarks = record.status === 'stopped' ? [stoppedRemark] : []
  if (question.form === 'json') {
    return { kind: 'done', output: `${JSON.stringify(record, null, 2)}\n`, remarks }
  }
  const output = question.form === 'csv' ? lengthsCsv(design, record) : lengthsText(design, record)
  return { kind: 'done', output, remarks }
}

const stoppedRemark =
  'Warning: the search ran out of steps; the lengths are the best found, not surely the best.'

function reasonOf(
  { answer: none }: Extract<LengthsRecordAnswer, { kind: 'none' }>,
  question: Question,
): string {
  if (none.status === 'programFailed') return `found no answer of the linear programs (${none.reason})`
  return none.refusals.map((each) => refusalText(each, question)).join('; ')
}

/** A refusal in the words of the options. */
function refusalText({ kind, path, found, expected }: LengthRefusal, { request }: Question): string {
  if (kind === 'unknownLoop' && path.startsWith('free['))
    return `--free: found ${found}, expected ${expected}`
  if (kind === 'unknownFingering') return `--leave-out: found ${found}, expected ${expected}`
  if (kind === 'allWeightsZero') {
    const named = request.leaveOut.join(',')
    return named === ''
      ? 'found no fingering to count, expected a design with fingerings'
      : `--leave-out: found ${named}, which is every fingering, expected one that counts`
  }
  if (kind === 'nothingFree') return '--free: found no loop, expected at least one, or --open-free'
  return `${path}: found ${found}, expected ${expected}`
}
