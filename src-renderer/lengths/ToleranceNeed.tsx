import type { ReactNode } from 'react'
import { lengthText, plainFigure } from '#shared/quantity/figures.ts'
import type { PlayedRoute } from '#shared/solve/slideMovement.ts'
import type { MadeWithin } from '#shared/solve/toleranceBands.ts'
import {
  type ToleranceNeeded,
  type TolerancesNeeded,
  toleranceNeeded,
} from '#shared/solve/toleranceNeeded.ts'
import { NumberField } from '../fields/NumberField.tsx'
import type { DerivedDesign } from '../state/derived.ts'
import { setDoubt, useLengths } from '../state/lengthsStore.ts'
import { useSettings } from '../state/settings.ts'
import { doubtWords } from '../words/lengthsDoubt.ts'
import { designedRoutes, madeWithin, temperatureEffect, useDoubt } from './doubt.ts'
import { fingeringWords } from './shownFingerings.ts'

interface ToleranceNeedProps {
  readonly derived: DerivedDesign
  readonly routes: readonly PlayedRoute[]
}

/** The tolerance that keeps every counted fingering within so many cents, alike on every part or as given above. */
export function ToleranceNeed({ derived, routes }: ToleranceNeedProps): ReactNode {
  const doubts = useDoubt()
  const weights = useLengths((state) => state.weights)
  const unit = useSettings((settings) => settings.unit)
  const { withinCents, readingErrorCents } = doubts.choices
  const chosen = designedRoutes(routes.filter(({ name }) => weights.get(name) !== 0))
  const need = (pattern: MadeWithin): TolerancesNeeded =>
    toleranceNeeded(chosen, pattern, withinCents, temperatureEffect(doubts), readingErrorCents)
  const given = madeWithin(derived, doubts.choices)
  const alike = need({
    bodyMm: 1,
    loopsMm: Object.fromEntries(derived.design.loops.map(({ id }) => [id, 1])),
  })
  const asGiven = need(given)
  const size = (share: number): string =>
    doubtWords.onEveryPart(lengthText(share, unit, unit === 'mm' ? 2 : 4))
  const part = (share: number): string => doubtWords.timesAbove(plainFigure(share, 2))
  return (
    <div className="need">
      <NumberField
        label={doubtWords.keepWithin}
        value={withinCents}
        digits={1}
        atLeast={0.1}
        atMost={200}
        by={1}
        width={5}
        units={['cents']}
        unit="cents"
        take={(cents) => {
          if (cents < 0.1) return doubtWords.refusedWithin(plainFigure(cents, 1))
          setDoubt({ withinCents: cents })
          return null
        }}
      />
      <ul>
        <li>{needWords(doubtWords.worstCase, alike.worstCase, size, asGiven.worstCase, part)}</li>
        <li>{needWords(doubtWords.rootSumSquare, alike.rootSumSquare, size, asGiven.rootSumSquare, part)}</li>
      </ul>
    </div>
  )
}

function needWords(
  name: string,
  alike: ToleranceNeeded,
  size: (share: number) => string,
  asGiven: ToleranceNeeded,
  part: (share: number) => string,
): string {
  if (alike.kind === 'unlimited') return doubtWords.any(name)
  if (alike.kind === 'none') {
    return doubtWords.none(name, fingeringWords(alike.fingering), plainFigure(alike.outsideByCents, 1))
  }
  const given = asGiven.kind === 'found' ? part(asGiven.shareOfGiven) : null
  return doubtWords.needed(name, size(alike.shareOfGiven), given, fingeringWords(alike.fingering))
}
