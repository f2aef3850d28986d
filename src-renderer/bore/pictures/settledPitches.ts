import { centsBetween, ratioOfSemitones } from '#shared/pitch/cents.ts'
import type { SumAnswer } from '../../worker/sumAnswer.ts'
import type { ShownFingering } from '../useBore.ts'

/** Where a note of one fingering would settle by the weighted sum. */
export interface SettledPitch {
  readonly fingering: string
  readonly mode: number
  readonly peakHz: number
  /** `null` when there is no maximum near the peak; both intervals are `null` then. */
  readonly hz: number | null
  readonly abovePeakCents: number | null
  /** Against the open route's pitch of the same mode, lowered by the fingering's drop. */
  readonly againstOpenCents: number | null
}

/** The pitches of the fingerings shown, in their order, mode by mode. */
export function settledPitches(
  { curves, openPitches }: Pick<SumAnswer, 'curves' | 'openPitches'>,
  shown: readonly Pick<ShownFingering, 'fingering' | 'semitones'>[],
): readonly SettledPitch[] {
  return shown.flatMap(({ fingering, semitones }) => {
    const pitches = curves.find((curve) => curve.fingering === fingering)?.pitches ?? []
    return pitches.map(({ hz, peakHz }, i) => {
      const openHz = openPitches[i]?.hz ?? null
      return {
        fingering,
        mode: i + 1,
        peakHz,
        hz,
        abovePeakCents: hz === null ? null : centsBetween(peakHz, hz),
        againstOpenCents:
          hz === null || openHz === null ? null : centsBetween(openHz / ratioOfSemitones(semitones), hz),
      }
    })
  })
}
