import type { ReactNode } from 'react'
import { briefFigure } from '#shared/quantity/figures.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { choose, useLengths, weigh } from '../state/lengthsStore.ts'
import { choiceWords } from '../words/lengths.ts'
import { fingeringWords, shownFingerings } from './shownFingerings.ts'

/** The fingerings as buttons: pressed ones count, and a click leaves one out or takes it in again. */
export function CountedFingerings({ derived }: { readonly derived: DerivedDesign }): ReactNode {
  const weights = useLengths((state) => state.weights)
  const openFree = useLengths((state) => state.openFree)
  const shown = shownFingerings(derived)
  const more = derived.tables.fingerings.length - shown.length
  return (
    <fieldset className="counted">
      <legend>{choiceWords.counted}</legend>
      {shown.map(({ name }) => {
        const weight = weights.get(name) ?? 1
        const open = name === '0' && !openFree
        return (
          <button
            key={name}
            type="button"
            className="chip"
            aria-pressed={weight > 0 && !open}
            disabled={open}
            aria-label={choiceWords.count(fingeringWords(name))}
            title={open ? choiceWords.openHeld : weight > 0 ? choiceWords.leaveOut : choiceWords.countAgain}
            onClick={() => weigh(name, weight > 0 ? 0 : 1)}
          >
            {name}
            {weight > 0 && weight !== 1 && !open ? <i> {choiceWords.times(weightFigure(weight))}</i> : null}
          </button>
        )
      })}
      <span className="quickCounts">
        {more > 0 ? <span className="soft">{choiceWords.more(more)}</span> : null}
        <button type="button" className="quiet" onClick={() => choose({ weights: new Map() })}>
          {choiceWords.allAlike}
        </button>
        <button type="button" className="quiet" onClick={() => choose({ weights: oneAStep(derived) })}>
          {choiceWords.oneAStep}
        </button>
      </span>
    </fieldset>
  )
}

/** Weights that leave out every fingering but the usual one of its drop. */
function oneAStep({ tables }: DerivedDesign): ReadonlyMap<string, number> {
  const usual = new Set(tables.usual.map(({ name }) => name))
  return new Map(tables.fingerings.flatMap(({ name }) => (usual.has(name) ? [] : [[name, 0] as const])))
}

export function weightFigure(weight: number): string {
  return briefFigure(weight, 2)
}
