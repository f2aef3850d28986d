import type { PitchChangeAnswer } from '#shared/bench/pitchChange.ts'
import type { Loop } from '#shared/valves/loop.ts'
import type { Design } from '#shared/workbook/workbook.ts'
import { pitchWords } from '../../words/benchPitch.ts'

/** What one part needs, mm: `nowMm`, `tubeMm` and `thenMm` are tube, `perLegMm` what each of two legs takes. */
export interface ChangeRow {
  readonly part: string
  readonly nowMm: number
  readonly tubeMm: number
  readonly perLegMm: number
  readonly thenMm: number
  /** The sum of rows that follow, and so nothing to be done by itself. */
  readonly isSum?: boolean
}

/**
 * The body, then every loop in the design's order. Where loops lie in the open route it is the open route in all,
 * then what of it the body itself takes and what those loops take, then the other loops.
 */
export function changeRows(design: Design, openMm: number, answer: PitchChangeAnswer): readonly ChangeRow[] {
  const row = (part: string, nowMm: number, { tubeMm, perLegMm }: PitchChangeAnswer['body']): ChangeRow => ({
    part,
    nowMm,
    tubeMm,
    perLegMm,
    thenMm: nowMm + tubeMm,
  })
  const isInBody = ({ id }: Loop): boolean => answer.loopsInBody.includes(id)
  const rowsOf = (loops: readonly Loop[], called: (name: string) => string): readonly ChangeRow[] =>
    loops.flatMap(({ id, name, lengthMm }) => {
      const change = Object.hasOwn(answer.loops, id) ? answer.loops[id] : undefined
      return change === undefined ? [] : [row(called(name ?? id), lengthMm, change)]
    })
  const inBody = design.loops.filter(isInBody)
  const others = rowsOf(
    design.loops.filter((loop) => !isInBody(loop)),
    (name) => name,
  )
  if (inBody.length === 0) return [row(pitchWords.body, openMm, answer.body), ...others]
  const inBodyMm = inBody.reduce((sum, { lengthMm }) => sum + lengthMm, 0)
  return [
    { ...row(pitchWords.openRoute, openMm, answer.body), isSum: true },
    row(pitchWords.ofIt(pitchWords.bodyItself), openMm - inBodyMm, answer.bodyItself),
    ...rowsOf(inBody, pitchWords.ofIt),
    ...others,
  ]
}

/** What is to be known of rows that hold others, or `null`. */
export function sumRemark({ loopsInBody }: PitchChangeAnswer): string | null {
  return loopsInBody.length === 0 ? null : pitchWords.sumRemark
}
