import { centsBetween } from '../pitch/cents.ts'
import { targetHz } from '../pitch/reference.ts'
import { writtenMidi } from '../pitch/transposition.ts'
import type { NamedFingering } from '../valves/fingerings.ts'
import { type Candidate, candidatesByMidi, type Found, harmonicHz } from './candidates.ts'
import type { Combination } from './combinations.ts'
import type { ChosenFingering, Instrument } from './instrument.ts'

/** One note of the compass and the ways to play it. */
export interface Note {
  /** Sounding midi number. */
  readonly midi: number
  readonly writtenMidi: number
  readonly targetHz: number
  /** Usual order: as the trade teaches them, harmonics 7, 11, 13 and 14 last. */
  readonly candidates: readonly Candidate[]
  /** What the trade teaches; `null` when only harmonics 7, 11, 13 or 14 come near. */
  readonly usual: Candidate | null
  readonly nearest: Candidate | null
  /** The player's choice, when the design keeps one; it may lie outside the candidates. */
  readonly chosen: Candidate | null
}

const nothingFound: Found = { usable: [], awkward: [] }

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
  const found = candidatesByMidi(instrument, combinations, fingerings)
  if (found.size === 0) return []
  const midis = [...found.keys()]
  const notes: Note[] = []
  for (let midi = Math.min(...midis); midi <= Math.max(...midis); midi++) {
    notes.push(noteOf(instrument, midi, found.get(midi) ?? nothingFound, combinations))
  }
  return notes
}

/** The candidate that counts for a note: the player's choice, else the usual, else the nearest. */
export function playedCandidate(note: Note): Candidate | null {
  return note.chosen ?? note.usual ?? note.nearest
}

function noteOf(
  instrument: Instrument,
  midi: number,
  { usable, awkward }: Found,
  combinations: readonly Combination[],
): Note {
  const candidates = [...usable, ...awkward]
  const hz = targetHz(midi, instrument.reference)
  const chosen = instrument.chosen[midi]
  return {
    midi,
    writtenMidi: writtenMidi(midi, instrument.transposition),
    targetHz: hz,
    candidates,
    usual: usable[0] ?? null,
    nearest: nearestOf(candidates),
    chosen: chosen === undefined ? null : chosenCandidate(instrument, chosen, hz, combinations),
  }
}

function nearestOf(candidates: readonly Candidate[]): Candidate | null {
  let nearest: Candidate | null = null
  for (const candidate of candidates) {
    if (nearest === null || Math.abs(candidate.errorCents) < Math.abs(nearest.errorCents) - 1e-9) {
      nearest = candidate
    }
  }
  return nearest
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
