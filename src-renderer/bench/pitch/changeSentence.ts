import type { PitchChangeAnswer } from '#shared/bench/pitchChange.ts'
import { plainFigure } from '#shared/quantity/figures.ts'
import type { BenchPitchChange } from '#shared/workbook/bench.ts'

/** What a change of pitch comes to, in a sentence. */
export function changeSentence(
  { fromA4Hz, toA4Hz }: Pick<BenchPitchChange, 'fromA4Hz' | 'toA4Hz'>,
  { cents, ratio }: PitchChangeAnswer,
): string {
  if (fromA4Hz === toA4Hz) return 'The pitch stays as it is.'
  const way = cents < 0 ? 'down' : 'up'
  const share = plainFigure(Math.abs(ratio - 1) * 100, 2)
  const more = ratio > 1 ? 'longer' : 'shorter'
  return `From ${fromA4Hz} to ${toA4Hz} Hz is ${plainFigure(Math.abs(cents), 1)} cents ${way}: every length must be ${share} % ${more}, body and loops alike.`
}
