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

/** Errors that differ by less are alike. */
const roundingCents = 1e-9

const awkwardHarmonics: ReadonlySet<number> = new Set([7, 11, 13, 14])

/**
 * Whether two candidates of one design are the same fingering on the same harmonic.
 *
 * @example isSameWay(candidate, note.usual)
 */
export function isSameWay(a: Candidate, b: Candidate | null): boolean {
  return b !== null && a.harmonic === b.harmonic && a.fingering === b.fingering
}

/** Frequency of harmonic n on a route, Hz: `n·c/(2·length)` times the offset of that harmonic. */
export function harmonicHz(instrument: Instrument, lengthMm: number, harmonic: number): number {
  const offsetCents = instrument.harmonicOffsetsCents[harmonic] ?? 0
  return ((harmonic * instrument.playedSpeedOfSoundMps * 1000) / (2 * lengthMm)) * ratioOfCents(offsetCents)
}

/**
 * The ways to reach every note. A compass has thousands of them and a picture wants one or two of a note, so that
 * a candidate is only made of those asked for. All are empty or `null` for a note that nothing reaches.
 */
export interface Ways {
  /** Lowest and highest midi number that some way reaches; `null` when there is none. */
  readonly compass: readonly [number, number] | null
  /** Usual order; harmonics 7, 11, 13 and 14 last. */
  readonly candidates: (midi: number) => readonly Candidate[]
  /**
   * What the trade teaches; `null` when only harmonics 7, 11, 13 or 14 come near. Where one fingering comes near on
   * two harmonics, the nearer.
   */
  readonly usual: (midi: number) => Candidate | null
  /** The first than which no other is nearer by more than rounding. */
  readonly nearest: (midi: number) => Candidate | null
}

/**
 * Finds the ways to reach every note. Fingerings are gone through in their usual order and harmonics upwards, so
 * that the lists come out in order and need no sorting.
 *
 * @param combinations rows of `combinationTable` for the same fingerings, in the same order
 */
export function waysToNotes(
  instrument: Instrument,
  combinations: readonly Combination[],
  fingerings: readonly NamedFingering[],
): Ways {
  const { a4Hz, temperament } = instrument.reference
  const harmonics = harmonicPlaces(instrument)
  const deviations = temperamentDeviations(temperament)
  const firstHz = combinations.map(
    ({ lengthMm }) => (instrument.playedSpeedOfSoundMps * 1000) / (2 * lengthMm),
  )
  const firstCents = firstHz.map((hz) => midiCentsOfHz(hz, a4Hz))

  const order = usualOrder(instrument.valves)
  const inOrder = fingerings.map((_, i) => i).sort((a, b) => order(fingerings[a]!, fingerings[b]!))
  const reachCents = candidateReachCents + largestOf(deviations)
  const errorCents = (place: number, midi: number): number =>
    place - 100 * midi - deviations[pitchClass(midi)]!
  const found = new Map<number, Found>()
  for (const i of inOrder) {
    for (let h = 0; h < harmonics.length; h++) {
      const { cents, isAwkward } = harmonics[h]!
      const place = firstCents[i]! + cents
      const highest = Math.floor((place + reachCents) / 100)
      for (let midi = Math.ceil((place - reachCents) / 100); midi <= highest; midi++) {
        const size = Math.abs(errorCents(place, midi))
        if (size > candidateReachCents) continue
        let present = found.get(midi)
        if (present === undefined) {
          present = { usable: newList(), awkward: newList() }
          found.set(midi, present)
        }
        add(isAwkward ? present.awkward : present.usable, i * harmonics.length + h, size)
      }
    }
  }

  const fingeringOf = (way: number): number => Math.floor(way / harmonics.length)
  const sizeOf = (way: number, midi: number): number =>
    Math.abs(errorCents(firstCents[fingeringOf(way)]! + harmonics[way % harmonics.length]!.cents, midi))
  const candidate = (way: number, midi: number): Candidate => {
    const i = fingeringOf(way)
    const { name, pressed, semitones } = fingerings[i]!
    const { harmonic, ratio, cents } = harmonics[way % harmonics.length]!
    return {
      fingering: name,
      pressed,
      semitones,
      harmonic,
      hz: firstHz[i]! * ratio,
      errorCents: errorCents(firstCents[i]! + cents, midi),
    }
  }
  const midis = [...found.keys()]
  return {
    compass: midis.length === 0 ? null : [Math.min(...midis), Math.max(...midis)],
    candidates: (midi) => waysInOrder(found.get(midi)).map((way) => candidate(way, midi)),
    usual: (midi) => {
      const ways = found.get(midi)?.usable.ways ?? []
      let best = ways[0]
      if (best === undefined) return null
      // Ways of one fingering stand side by side.
      for (let k = 1; k < ways.length && fingeringOf(ways[k]!) === fingeringOf(best); k++) {
        if (sizeOf(ways[k]!, midi) < sizeOf(best, midi) - roundingCents) best = ways[k]!
      }
      return candidate(best, midi)
    },
    nearest: (midi) => {
      const way = nearestWay(found.get(midi))
      return way === undefined ? null : candidate(way, midi)
    },
  }
}

/** Ways in their usual order, each a number, and the nearest of them. */
interface List {
  readonly ways: number[]
  nearest: number | undefined
  leastCents: number
}

/** The ways to a note; those on harmonics 7, 11, 13 and 14 are awkward. */
interface Found {
  readonly usable: List
  readonly awkward: List
}

function newList(): List {
  return { ways: [], nearest: undefined, leastCents: Number.POSITIVE_INFINITY }
}

function add(list: List, way: number, sizeCents: number): void {
  list.ways.push(way)
  if (sizeCents >= list.leastCents - roundingCents) return
  list.nearest = way
  list.leastCents = sizeCents
}

function waysInOrder(found: Found | undefined): readonly number[] {
  return found === undefined ? [] : [...found.usable.ways, ...found.awkward.ways]
}

function nearestWay(found: Found | undefined): number | undefined {
  if (found === undefined) return undefined
  const { usable, awkward } = found
  return awkward.leastCents < usable.leastCents - roundingCents ? awkward.nearest : usable.nearest
}

/** The harmonics of the compass, each with its interval above the first, its measured offset included. */
function harmonicPlaces({ harmonics: [lowest, highest], harmonicOffsetsCents }: Instrument) {
  return Array.from({ length: highest - lowest + 1 }, (_, i) => {
    const harmonic = lowest + i
    const offsetCents = harmonicOffsetsCents[harmonic] ?? 0
    const cents = centsBetween(1, harmonic) + offsetCents
    const ratio = harmonic * ratioOfCents(offsetCents)
    return { harmonic, cents, ratio, isAwkward: awkwardHarmonics.has(harmonic) }
  })
}

/** The largest of some deviations, whatever its sign. */
function largestOf(deviations: readonly number[]): number {
  return deviations.reduce((largest, cents) => Math.max(largest, Math.abs(cents)), 0)
}
