import { type ReactNode, useMemo, useState } from 'react'
import { noteName } from '#shared/pitch/noteName.ts'
import { plainFigure, signedCents } from '#shared/quantity/figures.ts'
import { meetingOf } from '#shared/sound/beats.ts'
import {
  isScale,
  type PassageKind,
  type PassageNote,
  passageKinds,
  passageNotes,
  passagePiece,
} from '#shared/sound/passage.ts'
import { playedCandidate } from '#shared/tuning/notes.ts'
import { Choice } from '../fields/Choice.tsx'
import type { DerivedDesign } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { listenWords as words } from '../words/listen.ts'
import { listenTo } from './listenActions.ts'
import { useListen } from './listenStore.ts'
import { useSoundingParts } from './useSoundingParts.ts'

/** A scale or a chord of the design with its chosen fingerings, against the same in tune. */
export function Passage({ derived }: { readonly derived: DerivedDesign }): ReactNode {
  const { notes } = derived.tables
  const spelling = useSettings((settings) => settings.spelling)
  const [kind, setKind] = useState<PassageKind>('majorScale')
  const [from, setFrom] = useState<number | null>(null)
  const [reach, setReach] = useState<'octave' | 'toTop'>('octave')
  const start = notes.some(({ midi }) => midi === from) ? from : startOf(derived)
  const chosen = useMemo(
    () => (start === null ? [] : passageNotes(notes, kind, start, reach === 'toTop')),
    [notes, kind, start, reach],
  )
  if (start === null) return <p className="soft">{words.noNotes}</p>
  return (
    <div className="listenPart">
      <div className="listenWhat">
        <Choice
          label={words.passage}
          labelHidden
          value={kind}
          options={passageKinds.map((value) => ({ value, text: words.passages[value] }))}
          take={setKind}
        />
        <Choice
          label={words.from}
          value={String(start)}
          options={notes.map(({ midi }) => ({ value: String(midi), text: noteName(midi, spelling) }))}
          take={(midi) => setFrom(Number(midi))}
        />
        {isScale(kind) ? (
          <Choice
            label={words.reach}
            labelHidden
            value={reach}
            options={[
              { value: 'octave', text: words.octave },
              { value: 'toTop', text: words.toTop },
            ]}
            take={setReach}
          />
        ) : null}
      </div>
      <PassageButtons kind={kind} notes={chosen} />
      <p className="soft listenBeats">
        <PassageWords kind={kind} notes={chosen} />
      </p>
    </div>
  )
}

/** A passage starts where the open second or fourth harmonic lies, else at the lowest note that is reached. */
function startOf({ tables }: DerivedDesign): number | null {
  const reached = tables.notes.filter((note) => playedCandidate(note) !== null)
  const open = reached.find((note) => {
    const played = playedCandidate(note)
    return played?.fingering === '0' && (played.harmonic === 2 || played.harmonic === 4)
  })
  return (open ?? reached[0])?.midi ?? null
}

interface PassageProps {
  readonly kind: PassageKind
  readonly notes: readonly PassageNote[]
}

function PassageButtons({ kind, notes }: PassageProps): ReactNode {
  const playing = useListen((state) => state.playing?.key ?? null)
  return (
    <fieldset className="segments listenWays">
      <legend className="unseen">{words.passages[kind]}</legend>
      {(['asPlayed', 'inTune'] as const).map((pitch) => (
        <button
          key={pitch}
          type="button"
          aria-pressed={playing === pitch}
          className={playing === pitch ? 'sounds' : undefined}
          onClick={() => void listenTo(pitch, passagePiece(kind, notes, pitch))}
        >
          {words[pitch]}
        </button>
      ))}
    </fieldset>
  )
}

/** What sounds now; at rest, the beats of a chord and what cannot be played. */
function PassageWords({ kind, notes }: PassageProps): ReactNode {
  const spelling = useSettings((settings) => settings.spelling)
  const name = (note: PassageNote): string => noteName(note.midi, spelling)
  const parts = [...useSoundingParts('asPlayed'), ...useSoundingParts('inTune')]
  const asPlayed = useListen((state) => state.playing?.key !== 'inTune')
  if (isScale(kind)) {
    const now = notes[parts[0] ?? -1]
    if (now !== undefined) return words.playing(soundingWords(now, name(now), asPlayed))
    const silent = notes.filter(({ played }) => played === null)
    return silent.length === 0 ? spanWords(notes, name) : words.silent(silent.map(name).join(', '))
  }
  const meetings = meetingWords(notes, name)
  return meetings === '' ? spanWords(notes, name) : words.meetings(meetings)
}

function soundingWords({ played }: PassageNote, name: string, asPlayed: boolean): string {
  if (played === null || !asPlayed) return name
  const { fingering, harmonic, errorCents } = played
  return `${words.noteOf(name, fingering, harmonic)}, ${words.centsOf(signedCents(errorCents))}`
}

/** `F2 to F3, −12.0 to +30.1 cents`. */
function spanWords(notes: readonly PassageNote[], name: (note: PassageNote) => string): string {
  const [first, last] = [notes[0], notes.at(-1)]
  if (first === undefined || last === undefined) return ''
  const cents = notes.flatMap(({ played }) => played?.errorCents ?? [])
  const span = `${signedCents(Math.min(...cents))} … ${signedCents(Math.max(...cents))}`
  return `${name(first)} … ${name(last)}, ${words.centsOf(span)}`
}

function meetingWords(notes: readonly PassageNote[], name: (note: PassageNote) => string): string {
  return notes
    .flatMap((low, i) => notes.slice(i + 1).map((high) => ({ low, high })))
    .flatMap(({ low, high }) => {
      if (low.played === null || high.played === null) return []
      const meeting = meetingOf(low.played.hz, high.played.hz)
      return meeting === null ? [] : [words.meeting(name(low), name(high), plainFigure(meeting.beatHz, 2))]
    })
    .join(', ')
}
