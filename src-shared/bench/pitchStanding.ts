import { midiCentsOfHz, nearestMidi } from '../pitch/reference.ts'

/** The note of an open route that is in tune where a change of pitch leads rather than where it starts. */
export interface AlreadyThere {
  readonly midi: number
  /** How far its fundamental is from that note at the new A4, cents; sharp is positive. */
  readonly cents: number
}

/** No farther from its note than this an instrument counts as tuned to it, cents. */
const inTuneCents = 12
/** Less than this between the two pitches tells nothing. */
const apartCents = 20

/**
 * Whether an instrument seems to stand at the new pitch of its change already: its fundamental is a note at the new A4
 * and none at the old. A change of a semitone, or an instrument between the notes, tells nothing.
 *
 * @returns `null` when it does not
 * @example alreadyThere(43.654, 452.5, 440)?.midi // 29: F1 at 440
 */
export function alreadyThere(fundamentalHz: number, fromA4Hz: number, toA4Hz: number): AlreadyThere | null {
  const there = placeAt(fundamentalHz, toA4Hz)
  const here = placeAt(fundamentalHz, fromA4Hz)
  const isThere =
    Math.abs(there.cents) <= inTuneCents && Math.abs(here.cents) - Math.abs(there.cents) >= apartCents
  return isThere ? there : null
}

function placeAt(hz: number, a4Hz: number): AlreadyThere {
  const place = midiCentsOfHz(hz, a4Hz)
  const midi = nearestMidi(hz, a4Hz)
  return { midi, cents: place - 100 * midi }
}
