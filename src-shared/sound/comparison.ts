import { beatHz } from './beats.ts'
import type { Piece, Tone } from './piece.ts'

/** How a note is heard against its target. */
export type ComparisonWay = 'note' | 'target' | 'alternately' | 'together'

/** The parts of a comparison, as its tones number them. */
export const comparisonParts = { note: 0, target: 1 } as const

const aloneS = 2.5

/** Alternately: long enough to take in, short enough to remember the one before. */
const turnS = 1.1
const gapS = 0.05
const rounds = 3

/** Together: three slow beats if they fit. */
const shortestTogetherS = 4
const longestTogetherS = 12
const wantedBeats = 3

/**
 * A note and its target to listen to: either alone, alternately three times, or together for three beats, from 4
 * to 12 seconds. Alone and alternately both sound at the whole level, together at half each.
 *
 * @param noteHz and `targetHz` frequencies above 0
 * @throws RangeError for a frequency that is not
 * @example comparison('together', 221, 220).lengthS // 4
 */
export function comparison(way: ComparisonWay, noteHz: number, targetHz: number): Piece {
  if (!(noteHz > 0 && targetHz > 0 && Number.isFinite(noteHz) && Number.isFinite(targetHz))) {
    throw new RangeError(`no note sounds at ${noteHz} Hz against ${targetHz} Hz`)
  }
  const note = { hz: noteHz, part: comparisonParts.note }
  const target = { hz: targetHz, part: comparisonParts.target }
  switch (way) {
    case 'note':
      return alone(note)
    case 'target':
      return alone(target)
    case 'alternately':
      return alternately(note, target)
    case 'together':
      return together(note, target)
  }
}

type Voice = Pick<Tone, 'hz' | 'part'>

function alone(voice: Voice): Piece {
  return { tones: [{ ...voice, startS: 0, durationS: aloneS, share: 1 }], lengthS: aloneS }
}

function alternately(note: Voice, target: Voice): Piece {
  const tones = Array.from({ length: 2 * rounds }, (_, i) => ({
    ...(i % 2 === 0 ? note : target),
    startS: i * (turnS + gapS),
    durationS: turnS,
    share: 1,
  }))
  return { tones, lengthS: 2 * rounds * (turnS + gapS) - gapS }
}

function together(note: Voice, target: Voice): Piece {
  const wantedS = wantedBeats / beatHz(note.hz, target.hz)
  const lengthS = Math.min(longestTogetherS, Math.max(shortestTogetherS, wantedS))
  const tones = [note, target].map((voice) => ({ ...voice, startS: 0, durationS: lengthS, share: 0.5 }))
  return { tones, lengthS }
}
