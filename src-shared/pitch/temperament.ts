import { centsBetween } from './cents.ts'
import { pitchClass } from './noteName.ts'
import { pitchClassOfName } from './parseNote.ts'

/** How the twelve notes of the octave stand to each other. `key` is a note name: `F`, `Bb`, `E♭`, `C#`. */
export type Temperament =
  | { readonly kind: 'equal' }
  | { readonly kind: 'just' | 'pythagorean' | 'meantone'; readonly key: string }
  | { readonly kind: 'custom'; readonly cents: readonly number[] }

const pitchClassOfA = 9

/**
 * What each note of the octave lies above (+) or below (−) its place in equal temperament, in cents: twelve
 * numbers, C first.
 *
 * A scale built on a key note is moved as a whole so that A does not deviate, because players tune to A: with
 * A4 at 440 Hz, A4 is 440 Hz in every temperament and key. Typed cents are used as they were typed; when the
 * tenth of them is not 0, A4 is off by that much.
 *
 * @throws RangeError for a key that is not a note name, and for typed cents that are not twelve finite numbers
 * @example temperamentDeviations({ kind: 'just', key: 'C' })[4] // 2: E lies a pure fifth above A
 */
export function temperamentDeviations(temperament: Temperament): readonly number[] {
  if (temperament.kind === 'equal') return equalDeviations
  if (temperament.kind === 'custom') return typedDeviations(temperament.cents)
  const key = pitchClassOfName(temperament.key)
  if (key === null) throw new RangeError(`no key note is called ${temperament.key}`)
  return levelledAtA(deviationsAboveKey[temperament.kind], key)
}

const equalDeviations: readonly number[] = Array<number>(12).fill(0)

/**
 * Five-limit just intonation above the key note, as textbooks list it for a chromatic scale (minor seventh 9/5,
 * raised fourth 45/32).
 */
const justRatios = [1, 16 / 15, 9 / 8, 6 / 5, 5 / 4, 4 / 3, 45 / 32, 3 / 2, 8 / 5, 5 / 3, 9 / 5, 15 / 8]

const pureFifthCents = centsBetween(2, 3)
/** Four of these fifths make a pure major third and two octaves. */
const meantoneFifthCents = centsBetween(1, 5) / 4

const deviationsAboveKey = {
  just: justRatios.map((ratio, semitones) => centsBetween(1, ratio) - 100 * semitones),
  pythagorean: chainOfFifths(pureFifthCents),
  meantone: chainOfFifths(meantoneFifthCents),
}

/**
 * Deviations above the key note of twelve notes a fifth apart, three below the key note to eight above it: E♭ to
 * G♯ when the key is C. The odd fifth that closes the circle lies between the two ends.
 */
function chainOfFifths(fifthCents: number): readonly number[] {
  const deviations = Array<number>(12).fill(0)
  for (let fifths = -3; fifths <= 8; fifths++) {
    deviations[pitchClass(7 * fifths)] = fifths * (fifthCents - 700)
  }
  return deviations
}

function levelledAtA(aboveKey: readonly number[], key: number): readonly number[] {
  const deviationOf = (note: number): number => aboveKey[pitchClass(note - key)]!
  return aboveKey.map((_, note) => deviationOf(note) - deviationOf(pitchClassOfA))
}

function typedDeviations(cents: readonly number[]): readonly number[] {
  if (cents.length !== 12 || !cents.every(Number.isFinite)) {
    throw new RangeError('a temperament needs twelve finite cents values')
  }
  return [...cents]
}
