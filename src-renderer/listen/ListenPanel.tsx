import type { ReactNode } from 'react'
import { useEffect, useId, useRef } from 'react'
import { Mark } from '../help/Mark.tsx'
import { focusIsLost } from '../look/focusIsLost.ts'
import type { DerivedDesign } from '../state/derived.ts'
import type { Selection } from '../state/viewStore.ts'
import { listenWords as words } from '../words/listen.ts'
import { Comparison } from './Comparison.tsx'
import { closeListen, listenAt, stopListening } from './listenActions.ts'
import { useLevel, useListen } from './listenStore.ts'
import { Passage } from './Passage.tsx'
import './listen.css'

interface ListenPanelProps {
  readonly derived: DerivedDesign
  readonly selection: Selection | null
}

/** The selected cell against its target, a scale or a chord of the design, the level, and a stop. */
export function ListenPanel({ derived, selection }: ListenPanelProps): ReactNode {
  const trouble = useListen((state) => state.trouble)
  const fold = useRef<HTMLButtonElement>(null)
  // The button that opened it is gone; whoever opened it by a key stays where they are.
  useEffect(() => {
    if (focusIsLost()) fold.current?.focus()
  }, [])
  // What is shown no longer is what sounds when the panel goes.
  useEffect(() => stopListening, [])
  return (
    <section className="listen" aria-label={words.title}>
      <div className="listenHead">
        <button ref={fold} type="button" className="quiet" aria-expanded onClick={closeListen}>
          {words.title}
        </button>
        <Mark id="beat" />
        <StopButton />
      </div>
      <Comparison derived={derived} selection={selection} />
      <Passage derived={derived} />
      <LevelField />
      {trouble === null ? null : (
        <p className="slip" role="alert">
          {words.noSound(trouble)}
        </p>
      )}
    </section>
  )
}

function StopButton(): ReactNode {
  const playing = useListen((state) => state.playing !== null)
  return (
    <button type="button" className={playing ? 'stop on' : 'stop'} onClick={stopListening}>
      {words.stop} <kbd>{words.stopKeys}</kbd>
    </button>
  )
}

function LevelField(): ReactNode {
  const level = useLevel((state) => state.level)
  const id = useId()
  return (
    <div className="listenLevel">
      <label htmlFor={id}>{words.level}</label>
      <input
        id={id}
        type="range"
        min={0}
        max={100}
        step={1}
        value={Math.round(100 * level)}
        onChange={(event) => listenAt(Number(event.target.value) / 100)}
      />
      <span className="soft">{Math.round(100 * level)} %</span>
    </div>
  )
}
