import { centsBetween } from '../pitch/cents.ts'
import { pitchClass } from '../pitch/noteName.ts'
import { midiCentsOfHz, targetHz } from '../pitch/reference.ts'
import { temperamentDeviations } from '../pitch/temperament.ts'
import { writtenMidi } from '../pitch/transposition.ts'
import type { NamedFingering } from '../valves/fingerings.ts'
import { usualOrder } from '../valves/usual.ts'
import type { Combination } from './combinations.ts'
import type { ChosenFingering, Instrument } from './instrument.ts'

/** A fingering and harmonic that sound near a note. */
export interface Candidate {
  readonly fingering: string
  readonly pressed: readonly string[]
  readonly semitones: number
  readonly harmonic: number
  readonly hz: number
  /** Against the note's target; positive sharp. */
  readonly errorCents: number
}

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

/** A candidate lies within this many cents of its note. */
export const candidateReachCents = 60

const awkwardHarmonics: ReadonlySet<number> = new Set([7, 11, 13, 14])

/**
 * The note table: every note from the lowest to the highest that some fingering reaches within 60 cents on a
 * harmonic of the compass, with its candidates. Notes between that nothing reaches are kept, with none.
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
  const rank = usualRank(instrument, fingerings)
  const midis = [...found.keys()]
  const notes: Note[] = []
  for (let midi = Math.min(...midis); midi <= Math.max(...midis); midi++) {
    notes.push(noteOf(instrument, midi, found.get(midi) ?? [], combinations, rank))
  }
  return notes
}

/** The candidate that counts for a note: the player's choice, else the usual, else the nearest. */
export function playedCandidate(note: Note): Candidate | null {
  return note.chosen ?? note.usual ?? note.nearest
}

/** Frequency of harmonic n on a route, Hz: `n·c/(2·length)` times the offset of that harmonic. */
export function harmonicHz(instrument: Instrument, lengthMm: number, harmonic: number): number {
  const offsetCents = instrument.harmonicOffsetsCents[harmonic] ?? 0
  return ((harmonic * instrument.playedSpeedOfSoundMps * 1000) / (2 * lengthMm)) * 2 ** (offsetCents / 1200)
}

function candidatesByMidi(
  instrument: Instrument,
  combinations: readonly Combination[],
  fingerings: readonly NamedFingering[],
): ReadonlyMap<number, Candidate[]> {
  const [lowest, highest] = instrument.harmonics
  const found = new Map<number, Candidate[]>()
  const deviations = temperamentDeviations(instrument.reference.temperament)
  const reach = Math.ceil((candidateReachCents + largestOf(deviations) - 50) / 100)
  for (let i = 0; i < fingerings.length; i++) {
    const { lengthMm } = combinations[i]!
    for (let harmonic = lowest; harmonic <= highest; harmonic++) {
      const hz = harmonicHz(instrument, lengthMm, harmonic)
      const place = midiCentsOfHz(hz, instrument.reference.a4Hz)
      const near = Math.round(place / 100)
      for (let midi = near - reach; midi <= near + reach; midi++) {
        const errorCents = place - 100 * midi - deviations[pitchClass(midi)]!
        if (Math.abs(errorCents) > candidateReachCents) continue
        const candidate = candidateOf(fingerings[i]!, harmonic, hz, errorCents)
        const present = found.get(midi)
        if (present === undefined) found.set(midi, [candidate])
        else present.push(candidate)
      }
    }
  }
  return found
}

/** The largest of some deviations, whatever its sign. */
function largestOf(deviations: readonly number[]): number {
  return deviations.reduce((largest, cents) => Math.max(largest, Math.abs(cents)), 0)
}

function candidateOf(
  { name, pressed, semitones }: NamedFingering,
  harmonic: number,
  hz: number,
  errorCents: number,
): Candidate {
  return { fingering: name, pressed, semitones, harmonic, hz, errorCents }
}

type Rank = (candidate: Candidate) => number

/** Position of a candidate in the usual order; those on awkward harmonics come after all others. */
function usualRank(instrument: Instrument, fingerings: readonly NamedFingering[]): Rank {
  const order = [...fingerings].sort(usualOrder(instrument.valves))
  const rank = new Map(order.map((fingering, i) => [fingering.name, i]))
  return ({ fingering, harmonic }) =>
    (rank.get(fingering) ?? order.length) + (awkwardHarmonics.has(harmonic) ? order.length + 1 : 0)
}

function noteOf(
  instrument: Instrument,
  midi: number,
  unsorted: readonly Candidate[],
  combinations: readonly Combination[],
  rank: Rank,
): Note {
  const candidates = [...unsorted].sort((a, b) => rank(a) - rank(b) || a.harmonic - b.harmonic)
  const hz = targetHz(midi, instrument.reference)
  const chosen = instrument.chosen[midi]
  return {
    midi,
    writtenMidi: writtenMidi(midi, instrument.transposition),
    targetHz: hz,
    candidates,
    usual: candidates.find(({ harmonic }) => !awkwardHarmonics.has(harmonic)) ?? null,
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
