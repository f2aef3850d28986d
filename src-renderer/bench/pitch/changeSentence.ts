import type { PitchChangeAnswer } from '#shared/bench/pitchChange.ts'
import { plainFigure } from '#shared/quantity/figures.ts'
import type { BenchPitchChange } from '#shared/workbook/bench.ts'
import { pitchWords } from '../../words/benchPitch.ts'

/** What a change of pitch comes to, in a sentence. */
export function changeSentence(
  { fromA4Hz, toA4Hz }: Pick<BenchPitchChange, 'fromA4Hz' | 'toA4Hz'>,
  { cents, ratio }: PitchChangeAnswer,
): string {
  if (fromA4Hz === toA4Hz) return pitchWords.same
  const size = plainFigure(Math.abs(cents), 1)
  const percent = plainFigure(Math.abs(ratio - 1) * 100, 2)
  return pitchWords.change(fromA4Hz, toA4Hz, size, cents >= 0, percent, ratio > 1)
}
