/**
 * The written note of a sounding one. `transposition` is sounding minus written, in semitones: −2 for an
 * instrument whose written C sounds B♭.
 *
 * @example writtenMidi(58, -2) // 60
 */
export function writtenMidi(soundingMidi: number, transposition: number): number {
  return soundingMidi - transposition
}
