import { centsBetween, ratioOfCents } from '../pitch/cents.ts'
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

const nothingFound: Found = { usable: [], awkward: [] }
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

/** Frequency of harmonic n on a route, Hz: `n·c/(2·length)` times the offset of that harmonic. */
export function harmonicHz(instrument: Instrument, lengthMm: number, harmonic: number): number {
  const offsetCents = instrument.harmonicOffsetsCents[harmonic] ?? 0
  return ((harmonic * instrument.playedSpeedOfSoundMps * 1000) / (2 * lengthMm)) * ratioOfCents(offsetCents)
}

/** The candidates of one note, each list in the usual order. */
interface Found {
  readonly usable: Candidate[]
  readonly awkward: Candidate[]
}

/**
 * Fingerings are gone through in their usual order and harmonics upwards, so that the lists come out in order
 * and need no sorting.
 */
function candidatesByMidi(
  instrument: Instrument,
  combinations: readonly Combination[],
  fingerings: readonly NamedFingering[],
): ReadonlyMap<number, Found> {
  const { a4Hz, temperament } = instrument.reference
  const order = usualOrder(instrument.valves)
  const inOrder = fingerings.map((_, i) => i).sort((a, b) => order(fingerings[a]!, fingerings[b]!))
  const harmonics = harmonicPlaces(instrument)
  const deviations = temperamentDeviations(temperament)
  const reach = Math.ceil((candidateReachCents + largestOf(deviations) - 50) / 100)
  const found = new Map<number, Found>()
  for (const i of inOrder) {
    const firstHz = (instrument.playedSpeedOfSoundMps * 1000) / (2 * combinations[i]!.lengthMm)
    const firstCents = midiCentsOfHz(firstHz, a4Hz)
    for (const { harmonic, ratio, cents } of harmonics) {
      const place = firstCents + cents
      const near = Math.round(place / 100)
      for (let midi = near - reach; midi <= near + reach; midi++) {
        const errorCents = place - 100 * midi - deviations[pitchClass(midi)]!
        if (Math.abs(errorCents) > candidateReachCents) continue
        const candidate = candidateOf(fingerings[i]!, harmonic, firstHz * ratio, errorCents)
        keep(found, midi, candidate)
      }
    }
  }
  return found
}

/** The harmonics of the compass, each with its interval above the first, its measured offset included. */
function harmonicPlaces({ harmonics: [lowest, highest], harmonicOffsetsCents }: Instrument) {
  return Array.from({ length: highest - lowest + 1 }, (_, i) => {
    const harmonic = lowest + i
    const offsetCents = harmonicOffsetsCents[harmonic] ?? 0
    const cents = centsBetween(1, harmonic) + offsetCents
    return { harmonic, cents, ratio: harmonic * ratioOfCents(offsetCents) }
  })
}

function keep(found: Map<number, Found>, midi: number, candidate: Candidate): void {
  let present = found.get(midi)
  if (present === undefined) {
    present = { usable: [], awkward: [] }
    found.set(midi, present)
  }
  if (awkwardHarmonics.has(candidate.harmonic)) present.awkward.push(candidate)
  else present.usable.push(candidate)
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
