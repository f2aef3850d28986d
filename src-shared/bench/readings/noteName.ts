const steps: Readonly<Record<string, number>> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 }

/**
 * The midi number of a note in scientific pitch notation, `C4` being 60, with `#` or `♯`, `b` or `♭`, doubled at
 * most; `null` when the text is no such name.
 *
 * @example midiOfNote('Bb2') // 46
 */
export function midiOfNote(text: string): number | null {
  const match = /^([A-G])(#{1,2}|♯{1,2}|b{1,2}|♭{1,2})?(-?\d)$/i.exec(text.trim())
  if (match === null) return null
  const [, letter = '', accidental = '', octave = ''] = match
  const sign = /[#♯]/.test(accidental) ? 1 : -1
  return 12 * (Number(octave) + 1) + steps[letter.toUpperCase()]! + sign * accidental.length
}
