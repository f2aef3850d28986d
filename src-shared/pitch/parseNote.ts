import { pitchClass } from './noteName.ts'

const semitonesAboveC = new Map(Object.entries({ c: 0, d: 2, e: 4, f: 5, g: 7, a: 9, b: 11 }))
const semitonesOfAccidental = new Map(Object.entries({ '': 0, '#': 1, '♯': 1, b: -1, '♭': -1 }))

/**
 * The midi number of a typed note name, or `null` when the text is not one: a letter of either case, perhaps
 * `#`, `♯`, `b` or `♭`, and the octave number of scientific pitch notation. The octave belongs to the letter, so
 * `Cb4` is the B below middle C. Only midi 0 to 127.
 *
 * @example parseNote('B♭3') // 58
 */
export function parseNote(text: string): number | null {
  const match = /^\s*([a-g][#♯b♭]?)\s*([-−]?\d{1,2})\s*$/iu.exec(text)
  const semitones = semitonesOfName(match?.[1] ?? '')
  if (semitones === null) return null
  const midi = 12 * (Number(match?.[2]?.replace('−', '-')) + 1) + semitones
  return midi >= 0 && midi <= 127 ? midi : null
}

/**
 * The place within the octave, 0 for C to 11 for B, of a note name without an octave number, as the key of a
 * temperament is written; `null` when the text is not one.
 *
 * @example pitchClassOfName('E♭') // 3
 */
export function pitchClassOfName(text: string): number | null {
  const semitones = semitonesOfName(text.trim())
  return semitones === null ? null : pitchClass(semitones)
}

/** Semitones above the C of the letter's own octave: −1 for C flat, 12 for B sharp. */
function semitonesOfName(name: string): number | null {
  const [letter, accidental] = [name.slice(0, 1).toLowerCase(), name.slice(1)]
  const natural = semitonesAboveC.get(letter)
  const change = semitonesOfAccidental.get(accidental)
  return natural === undefined || change === undefined ? null : natural + change
}
