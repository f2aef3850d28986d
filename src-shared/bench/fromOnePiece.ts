import { fundamentalHz, openLengthMm as lengthOfFundamentalMm } from '../tubing/openRoute.ts'
import { loopForDropMm } from '../tubing/requiredLength.ts'
import type { Valve } from '../valves/valve.ts'

/** The one thing about an instrument that could be measured. */
export type OnePiece =
  /** A loop, mm of tube with its slide where it plays in tune, and its valve's drop. */
  | { readonly kind: 'loop'; readonly lengthMm: number; readonly semitones: number }
  /** Bore length and the mouthpiece-and-bell correction to add to it, mm. */
  | { readonly kind: 'bore'; readonly boreLengthMm: number; readonly correctionMm: number }
  /** Nominal harmonic 1 of the open route, Hz. */
  | { readonly kind: 'fundamental'; readonly fundamentalHz: number }

/** What follows from one piece. */
export interface FromOnePiece {
  readonly openLengthMm: number
  readonly fundamentalHz: number
  /** Loop of each valve taken alone, mm of tube, by valve id; negative for an ascending valve. */
  readonly loopsMm: Readonly<Record<string, number>>
}

/**
 * The open length from one piece, and the nominal lengths of the others: `L = loop / (2^(k/12) − 1)` from a loop
 * of k semitones, bore length plus correction, or `c / 2f`. A valve of no semitones, or a value that gives no
 * length above 0, throws.
 *
 * @example fromOnePiece({ kind: 'loop', lengthMm: 100, semitones: 1 }, valves, 345).openLengthMm // 1682
 */
export function fromOnePiece(
  piece: OnePiece,
  valves: readonly Valve[],
  speedOfSoundMPerS: number,
): FromOnePiece {
  const openLengthMm = openLength(piece, speedOfSoundMPerS)
  if (!(openLengthMm > 0 && Number.isFinite(openLengthMm)))
    throw new RangeError(`No open length above 0 follows from ${JSON.stringify(piece)}`)
  return {
    openLengthMm,
    fundamentalHz: fundamentalHz(speedOfSoundMPerS, openLengthMm),
    loopsMm: Object.fromEntries(
      valves.map(({ id, semitones }) => [id, loopForDropMm(openLengthMm, semitones)]),
    ),
  }
}

function openLength(piece: OnePiece, speedOfSoundMPerS: number): number {
  switch (piece.kind) {
    case 'loop':
      return piece.lengthMm / loopForDropMm(1, piece.semitones)
    case 'bore':
      return piece.boreLengthMm + piece.correctionMm
    case 'fundamental':
      return lengthOfFundamentalMm(speedOfSoundMPerS, piece.fundamentalHz)
  }
}
