/** What names the note that a fingering is meant to sound. */
export interface NamedFundamental {
  /** Nominal harmonic 1 of the open route, Hz at the design's own A4. */
  readonly fundamentalHz: number
  readonly a4Hz: number
}

/**
 * The midi number of the equal-tempered note that a fingering of nominal drop `semitones` is meant to sound on a
 * harmonic: the nearest to the fundamental, down by the drop, up by the harmonic's own nearest step.
 *
 * @example meantMidi({ fundamentalHz: 43.654, a4Hz: 440 }, 3, 4) // 50, D3
 */
export function meantMidi(open: NamedFundamental, semitones: number, harmonic: number): number {
  const openMidi = Math.round(69 + 12 * Math.log2(open.fundamentalHz / open.a4Hz))
  return Math.round(openMidi - semitones) + harmonicSteps(harmonic)
}

/**
 * Frequency of {@link meantMidi} at the A4 that the tuner was set to, Hz. Equal temperament; a design in another
 * temperament gives each reading its own `targetHz`.
 *
 * @example meantHz({ fundamentalHz: 43.654, a4Hz: 440 }, 0, 4, 442) // 175.4
 */
export function meantHz(
  open: NamedFundamental,
  semitones: number,
  harmonic: number,
  tunerA4Hz: number,
): number {
  return tunerA4Hz * 2 ** ((meantMidi(open, semitones, harmonic) - 69) / 12)
}

/**
 * The harmonic on which a fingering comes nearest to a note, or `null` when none comes within 60 cents.
 *
 * @example harmonicOfNote({ fundamentalHz: 43.654, a4Hz: 440 }, 3, 50) // 4
 */
export function harmonicOfNote(open: NamedFundamental, semitones: number, midi: number): number | null {
  const aboveOpen = midi - 69 - 12 * Math.log2(open.fundamentalHz / open.a4Hz) + semitones
  const harmonic = Math.max(1, Math.round(2 ** (aboveOpen / 12)))
  const awayCents = 100 * aboveOpen - 1200 * Math.log2(harmonic)
  return Math.abs(awayCents) <= 60 ? harmonic : null
}

/** How far a harmonic lies from the nearest equal-tempered step, cents: −13.7 for the fifth. */
export function harmonicFromTemperedCents(harmonic: number): number {
  return 1200 * Math.log2(harmonic) - 100 * harmonicSteps(harmonic)
}

function harmonicSteps(harmonic: number): number {
  return Math.round(12 * Math.log2(harmonic))
}
