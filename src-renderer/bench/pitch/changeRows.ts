import type { PitchChangeAnswer } from '#shared/bench/pitchChange.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { pitchWords } from '../../words/benchPitch.ts'

/** What one part needs, mm: `nowMm`, `tubeMm` and `thenMm` are tube, `perLegMm` what each of two legs takes. */
export interface ChangeRow {
  readonly part: string
  readonly nowMm: number
  readonly tubeMm: number
  readonly perLegMm: number
  readonly thenMm: number
}

/** The body, then every loop in the design's order. The body holds the loops that lie in the open route. */
export function changeRows(design: Design, openMm: number, answer: PitchChangeAnswer): readonly ChangeRow[] {
  const row = (part: string, nowMm: number, { tubeMm, perLegMm }: PitchChangeAnswer['body']): ChangeRow => ({
    part,
    nowMm,
    tubeMm,
    perLegMm,
    thenMm: nowMm + tubeMm,
  })
  return [
    row(pitchWords.body, openMm, answer.body),
    ...design.loops.flatMap(({ id, name, lengthMm }) => {
      const change = Object.hasOwn(answer.loops, id) ? answer.loops[id] : undefined
      return change === undefined ? [] : [row(name ?? id, lengthMm, change)]
    }),
  ]
}
