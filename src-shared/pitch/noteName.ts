/** How the black keys are spelled. */
export type Spelling = 'sharps' | 'flats'

const letters: Readonly<Record<Spelling, readonly string[]>> = {
  sharps: ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B'],
  flats: ['C', 'Db', 'D', 'Eb', 'E', 'F', 'Gb', 'G', 'Ab', 'A', 'Bb', 'B'],
}

/**
 * A note's name for people, with ♯ or ♭ and the octave number of scientific pitch notation (midi 60 is C4).
 *
 * @throws RangeError when `midi` is not a whole number
 * @example noteName(58, 'flats') // 'B♭3'
 */
export function noteName(midi: number, spelling: Spelling): string {
  return plainNoteName(midi, spelling).replace('#', '♯').replace('b', '♭').replace('-', '−')
}

/**
 * A note's name in ASCII, for files and for the headless tables.
 *
 * @throws RangeError when `midi` is not a whole number
 * @example plainNoteName(58, 'flats') // 'Bb3'
 */
export function plainNoteName(midi: number, spelling: Spelling): string {
  return `${pitchClassName(midi, spelling)}${Math.floor(midi / 12) - 1}`
}

/**
 * A note's name in ASCII without its octave.
 *
 * @throws RangeError when `midi` is not a whole number
 * @example pitchClassName(58, 'sharps') // 'A#'
 */
export function pitchClassName(midi: number, spelling: Spelling): string {
  const name = letters[spelling][pitchClass(midi)]
  if (name === undefined) throw new RangeError(`no note has the number ${midi}`)
  return name
}

/**
 * The place of a note within its octave: 0 for C to 11 for B.
 *
 * @example pitchClass(57) // 9, an A
 */
export function pitchClass(midi: number): number {
  return ((midi % 12) + 12) % 12
}
