import { centsBetween } from '../pitch/cents.ts'
import { targetHz } from '../pitch/reference.ts'
import { writtenMidi } from '../pitch/transposition.ts'
import type { NamedFingering } from '../valves/fingerings.ts'
import { type Candidate, harmonicHz, type Ways, waysToNotes } from './candidates.ts'
import type { Combination } from './combinations.ts'
import type { ChosenFingering, Instrument } from './instrument.ts'
import { once } from './once.ts'

/** One note of the compass and the ways to play it. */
export interface Note {
  /** Sounding midi number. */
  readonly midi: number
  readonly writtenMidi: number
  readonly targetHz: number
  /** Usual order: as the trade teaches them, harmonics 7, 11, 13 and 14 last. Made when they are first asked for. */
  readonly candidates: () => readonly Candidate[]
  /** What the trade teaches; `null` when only harmonics 7, 11, 13 or 14 come near. */
  readonly usual: Candidate | null
  readonly nearest: Candidate | null
  /** The player's choice, when the design keeps one; it may lie outside the candidates. */
  readonly chosen: Candidate | null
}

/**
 * The note table: every note from the lowest to the highest that some fingering reaches within 60 cents on a
 * harmonic of the compass, with its candidates. Notes between that nothing reaches are kept, with none. A choice for a
 * note beyond them, or of a fingering that is not there, is passed over.
 *
 * @param combinations rows of `combinationTable` for the same fingerings, in the same order
 */
export function noteTable(
  instrument: Instrument,
  combinations: readonly Combination[],
  fingerings: readonly NamedFingering[],
): readonly Note[] {
  const ways = waysToNotes(instrument, combinations, fingerings)
  if (ways.compass === null) return []
  const [lowest, highest] = ways.compass
  return Array.from({ length: highest - lowest + 1 }, (_, i) =>
    noteOf(instrument, lowest + i, ways, combinations),
  )
}

/** The candidate that counts for a note: the player's choice, else the usual, else the nearest. */
export function playedCandidate(note: Note): Candidate | null {
  return note.chosen ?? note.usual ?? note.nearest
}

function noteOf(
  instrument: Instrument,
  midi: number,
  ways: Ways,
  combinations: readonly Combination[],
): Note {
  const hz = targetHz(midi, instrument.reference)
  const chosen = instrument.chosen[midi]
  return {
    midi,
    writtenMidi: writtenMidi(midi, instrument.transposition),
    targetHz: hz,
    candidates: once(() => ways.candidates(midi)),
    usual: ways.usual(midi),
    nearest: ways.nearest(midi),
    chosen: chosen === undefined ? null : chosenCandidate(instrument, chosen, hz, combinations),
  }
}

function chosenCandidate(
  instrument: Instrument,
  { pressed, harmonic }: ChosenFingering,
  targetHzOfNote: number,
  combinations: readonly Combination[],
): Candidate | null {
  const row = combinations.find((each) => samePressed(each.pressed, pressed))
  if (row === undefined) return null
  const hz = harmonicHz(instrument, row.lengthMm, harmonic)
  const errorCents = centsBetween(targetHzOfNote, hz)
  return {
    fingering: row.fingering,
    pressed: row.pressed,
    semitones: row.semitones,
    harmonic,
    hz,
    errorCents,
  }
}

/** Whether two lists name the same valves, in whatever order. */
function samePressed(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((id) => b.includes(id))
}
