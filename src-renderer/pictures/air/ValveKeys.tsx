import type { ReactNode } from 'react'
import { briefFigure } from '#shared/quantity/figures.ts'
import type { Valve } from '#shared/valves/valve.ts'
import { companyWords, airWords as words } from '../../words/pictures.ts'
import { usePictures } from '../picturesStore.ts'
import { mostKeys, pressValve } from './useValveKeys.ts'

interface ValveKeysProps {
  readonly valves: readonly Valve[]
  readonly pressed: readonly string[]
}

/** A key for each valve, and one that lets all of them up. */
export function ValveKeys({ valves, pressed }: ValveKeysProps): ReactNode {
  return (
    <fieldset className="valveKeys">
      <legend className="unseen">{words.valves}</legend>
      <button
        type="button"
        className="valveKey"
        aria-pressed={pressed.length === 0}
        aria-keyshortcuts="0"
        onClick={() => usePictures.setState({ pressed: [] })}
      >
        <b>{words.release}</b>
        <small>{words.releaseKey}</small>
      </button>
      {valves.map(({ id, semitones }, i) => (
        <button
          key={id}
          type="button"
          className="valveKey"
          aria-pressed={pressed.includes(id)}
          {...(i < mostKeys ? { 'aria-keyshortcuts': String(i + 1) } : {})}
          onClick={() => pressValve(pressed, id)}
        >
          <b>{id}</b>
          <small>
            {dropWords(semitones)}
            {i < mostKeys && id !== String(i + 1) ? `, ${words.key(String(i + 1))}` : null}
          </small>
        </button>
      ))}
    </fieldset>
  )
}

function dropWords(semitones: number): string {
  const size = Math.abs(semitones)
  const count = briefFigure(size, 2)
  const drop = companyWords.semitones(count)
  return semitones < 0 ? words.drop(drop, true) : drop
}
