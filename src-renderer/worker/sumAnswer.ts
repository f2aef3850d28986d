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
  /** Modes up to this one are drawn and asked for their playing pitch. */
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

/** The weighted sum over the range of the drawn modes, and the playing pitches it gives. */
export function sumBore(question: SumQuestion, body: BoreResult<Body>): BoreResult<SumAnswer> {
  if (!body.ok) return body
  const open = drawnSum(question, body.value, question.open)
  if (!open.ok) return open
  const curves: DrawnSum[] = []
  for (const fingering of question.fingerings) {
    const drawn = drawnSum(question, body.value, fingering)
    if (!drawn.ok) return drawn
    curves.push(drawn.value)
  }
  return accepted({ hz: open.value.hz, curves, openPitches: open.value.pitches })
}

function drawnSum(
  { weights, lastMode, points }: SumQuestion,
  body: Body,
  { fingering, inserts }: BoreFingering,
): BoreResult<DrawnSum & { readonly hz: Float64Array }> {
  const found = resonancesOf(body, inserts)
  if (!found.ok) return found
  const peaksHz = found.value.peaks.slice(0, lastMode).map(({ hz }) => hz)
  const pitches = playingPitches(body, inserts, peaksHz, weights)
  if (!pitches.ok) return pitches
  const highestHz = Math.min(body.highestHz, ((lastMode + 0.5) * body.highestHz) / (body.highestMode + 1))
  const range = { lowestHz: body.lowestHz, highestHz, count: points }
  const curve = harmonicSumCurve(body, inserts, range, weights)
  if (!curve.ok) return curve
  const { hz, sum } = curve.value
  return accepted({ fingering, hz, sum: sum.map((value) => value / 1e6), pitches: pitches.value })
}
