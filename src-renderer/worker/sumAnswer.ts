import type { Body } from '#shared/bore/body.ts'
import type { BoreFingering } from '#shared/bore/fingeringModes.ts'
import { harmonicSumCurve, type PlayingPitch, playingPitches } from '#shared/bore/harmonicSum.ts'
import { accepted, type BoreResult } from '#shared/bore/refusal.ts'
import { resonancesOf } from '#shared/bore/resonances.ts'
import type { BoreQuestion } from './boreAnswer.ts'

/** What is asked about the weighted sum of Re Z. */
export interface SumQuestion extends Pick<BoreQuestion, 'bodyKey' | 'highestMode' | 'open'> {
  readonly fingerings: readonly BoreFingering[]
  readonly weights: readonly number[]
  readonly firstMode: number
  /** Modes from the first up to this one are drawn and asked for their playing pitch. */
  readonly lastMode: number
  readonly points: number
}

/** The weighted sum of one fingering. */
export interface DrawnSum {
  readonly fingering: string
  /** MPa·s/m³. */
  readonly sum: Float64Array
  /** Mode n is `pitches[n - 1]`. */
  readonly pitches: readonly PlayingPitch[]
}

/** What the worker says about the weighted sum. */
export interface SumAnswer {
  readonly hz: Float64Array
  readonly curves: readonly DrawnSum[]
  readonly openPitches: readonly PlayingPitch[]
}

/** Below the first mode drawn the sum is a thicket of harmonics: the curve begins at this share of it. */
const firstShare = 0.7

/** The weighted sum over the range of the drawn modes, and the playing pitches it gives. */
export function sumBore(question: SumQuestion, body: BoreResult<Body>): BoreResult<SumAnswer> {
  if (!body.ok) return body
  const peaks: (readonly number[])[] = []
  for (const { inserts } of [question.open, ...question.fingerings]) {
    const found = resonancesOf(body.value, inserts)
    if (!found.ok) return found
    peaks.push(found.value.peaks.slice(0, question.lastMode).map(({ hz }) => hz))
  }
  const range = drawnRange(question, body.value, peaks)
  const open = drawnSum(question, body.value, question.open, peaks[0]!, range)
  if (!open.ok) return open
  const curves: DrawnSum[] = []
  for (const [i, fingering] of question.fingerings.entries()) {
    const drawn = drawnSum(question, body.value, fingering, peaks[i + 1]!, range)
    if (!drawn.ok) return drawn
    curves.push(drawn.value)
  }
  return accepted({ hz: open.value.hz, curves, openPitches: open.value.pitches })
}

interface Range {
  readonly lowestHz: number
  readonly highestHz: number
  readonly count: number
}

/** From somewhat below the lowest first mode drawn to somewhat above the last of the body alone. */
function drawnRange(
  { firstMode, lastMode, points }: SumQuestion,
  { lowestHz, highestHz, highestMode }: Body,
  peaks: readonly (readonly number[])[],
): Range {
  const firstHz = Math.min(...peaks.map((hz) => hz[firstMode - 1] ?? hz[0] ?? lowestHz))
  return {
    lowestHz: Math.max(lowestHz, firstShare * firstHz),
    highestHz: Math.min(highestHz, ((lastMode + 0.5) * highestHz) / (highestMode + 1)),
    count: points,
  }
}

function drawnSum(
  { weights }: SumQuestion,
  body: Body,
  { fingering, inserts }: BoreFingering,
  peaksHz: readonly number[],
  range: Range,
): BoreResult<DrawnSum & { readonly hz: Float64Array }> {
  const pitches = playingPitches(body, inserts, peaksHz, weights)
  if (!pitches.ok) return pitches
  const curve = harmonicSumCurve(body, inserts, range, weights)
  if (!curve.ok) return curve
  const { hz, sum } = curve.value
  return accepted({ fingering, hz, sum: sum.map((value) => value / 1e6), pitches: pitches.value })
}
