import { type ReactNode, useMemo, useState } from 'react'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { partialBeats } from '#shared/sound/beats.ts'
import { type ComparisonWay, comparison, comparisonParts } from '#shared/sound/comparison.ts'
import { Choice } from '../fields/Choice.tsx'
import type { DerivedDesign } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import type { Selection } from '../state/viewStore.ts'
import { listenWords as words } from '../words/listen.ts'
import { firstHarmonic } from './hearCell.ts'
import { type HeardPair, heardPair } from './heardPair.ts'
import { listenTo } from './listenActions.ts'
import { useListen } from './listenStore.ts'
import { useSoundingParts } from './useSoundingParts.ts'

interface ComparisonProps {
  readonly derived: DerivedDesign
  readonly selection: Selection | null
}

const ways: readonly ComparisonWay[] = ['note', 'target', 'alternately', 'together']

/** The selected cell: alone, its target, both in turn, both together with their beats. */
export function Comparison({ derived, selection }: ComparisonProps): ReactNode {
  const spelling = useSettings((settings) => settings.spelling)
  const [harmonic, setHarmonic] = useState(firstHarmonic)
  const pair = useMemo(
    () => heardPair(derived, selection, harmonic, spelling),
    [derived, selection, harmonic, spelling],
  )
  if (pair === null) return <p className="soft">{words.nothingPicked}</p>
  return (
    <div className="listenPart">
      <div className="listenWhat">
        <b>{pair.title}</b>
        {selection?.kind === 'fingering' ? (
          <HarmonicChoice derived={derived} value={harmonic} take={setHarmonic} />
        ) : null}
        <span className="soft">{words.centsOf(signedCents(pair.errorCents))}</span>
      </div>
      <Ways pair={pair} />
      <p className="soft listenBeats">{beatWords(pair)}</p>
    </div>
  )
}

function Ways({ pair }: { readonly pair: HeardPair }): ReactNode {
  const playing = useListen((state) => state.playing?.key ?? null)
  const inTurn = useSoundingParts('alternately')
  const sounds = (way: ComparisonWay): boolean =>
    playing === way || ((way === 'note' || way === 'target') && inTurn.includes(comparisonParts[way]))
  return (
    <fieldset className="segments listenWays">
      <legend className="unseen">{words.against}</legend>
      {ways.map((way) => (
        <button
          key={way}
          type="button"
          aria-pressed={playing === way}
          className={sounds(way) ? 'sounds' : undefined}
          onClick={() => void listenTo(way, comparison(way, pair.noteHz, pair.targetHz))}
        >
          {words.ways[way]}
        </button>
      ))}
    </fieldset>
  )
}

interface HarmonicChoiceProps {
  readonly derived: DerivedDesign
  readonly value: number
  readonly take: (harmonic: number) => void
}

function HarmonicChoice({ derived, value, take }: HarmonicChoiceProps): ReactNode {
  const [, last] = derived.instrument.harmonics
  const numbers = Array.from({ length: Math.max(8, last) }, (_, i) => String(i + 1))
  return (
    <Choice
      label={words.onHarmonic}
      value={String(value)}
      options={numbers.map((number) => ({ value: number, text: number }))}
      take={(number) => take(Number(number))}
    />
  )
}

/** Slower than this nobody hears a beat, swells a second. */
const slowestHz = 0.02

/** Faster than this it is no longer counted but heard as roughness. */
const fastestHz = 20

const shownPartials = 3

function beatWords({ noteHz, targetHz }: HeardPair): string {
  const [first, ...others] = partialBeats(noteHz, targetHz)
  if (first === undefined || first.beatHz < slowestHz) return words.noBeat
  const counted = others.slice(0, shownPartials - 1).filter(({ beatHz }) => beatHz <= fastestHz)
  return [
    words.beats(plainFigure(first.beatHz, 2)),
    ...counted.map(({ partial, beatHz }) => words.atPartial(plainFigure(beatHz, 2), partial)),
  ].join(', ')
}
