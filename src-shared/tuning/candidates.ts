import { centsBetween, ratioOfCents } from '../pitch/cents.ts'
import { pitchClass } from '../pitch/noteName.ts'
import { midiCentsOfHz } from '../pitch/reference.ts'
import { temperamentDeviations } from '../pitch/temperament.ts'
import type { NamedFingering } from '../valves/fingerings.ts'
import { usualOrder } from '../valves/usual.ts'
import type { Combination } from './combinations.ts'
import type { Instrument } from './instrument.ts'

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

/** A candidate lies within this many cents of its note. */
export const candidateReachCents = 60

const awkwardHarmonics: ReadonlySet<number> = new Set([7, 11, 13, 14])

/** Frequency of harmonic n on a route, Hz: `n·c/(2·length)` times the offset of that harmonic. */
export function harmonicHz(instrument: Instrument, lengthMm: number, harmonic: number): number {
  const offsetCents = instrument.harmonicOffsetsCents[harmonic] ?? 0
  return ((harmonic * instrument.playedSpeedOfSoundMps * 1000) / (2 * lengthMm)) * ratioOfCents(offsetCents)
}

/** The candidates of one note, each list in the usual order; those on harmonics 7, 11, 13 and 14 apart. */
export interface Found {
  readonly usable: Candidate[]
  readonly awkward: Candidate[]
}

/**
 * The candidates of every note that some fingering reaches, by midi number. Fingerings are gone through in their
 * usual order and harmonics upwards, so that the lists come out in order and need no sorting.
 *
 * @param combinations rows of `combinationTable` for the same fingerings, in the same order
 */
export function candidatesByMidi(
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
