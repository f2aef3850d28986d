import { gainOfLevel, levelLimit } from '#shared/sound/level.ts'
import { type Piece, stopFadeS } from '#shared/sound/piece.ts'
import { limiter, type SoundingPiece, soundPiece } from './soundPiece.ts'

/** Between a press and the first sample: what an audio thread needs to be ready, s. */
const leadS = 0.06

/** How fast the level follows its control, s. */
const levelFollowsS = 0.01

/** A sound device that has not answered by then is none, ms. */
const patienceMs = 3000

interface Output {
  readonly context: AudioContext
  readonly level: GainNode
}

let output: Output | null = null
let sounding: SoundingPiece | null = null
let resting: ReturnType<typeof setTimeout> | undefined
/** Counts presses and stops, so that a stop also stops what has not begun. */
let turn = 0

export type PlayAnswer =
  | { readonly kind: 'playing'; readonly startsInS: number }
  /** Stopped, or something else asked for, before it began. */
  | { readonly kind: 'stopped' }
  | { readonly kind: 'noSound'; readonly found: string }

/**
 * Plays a piece in place of what sounds. The audio context is made at the first press and rests while nothing
 * sounds.
 */
export async function play(piece: Piece, level: number): Promise<PlayAnswer> {
  silence()
  const own = turn
  try {
    output ??= newOutput()
    const { context, level: gain } = output
    clearTimeout(resting)
    setLevel(level)
    await answered(context.resume())
    if (own !== turn) return { kind: 'stopped' }
    // What sounded before fades while the next already waits.
    const startsInS = leadS + stopFadeS
    sounding = soundPiece(context, gain, piece, context.currentTime + startsInS)
    restAfter(startsInS + piece.lengthS)
    return { kind: 'playing', startsInS }
  } catch (reason) {
    return { kind: 'noSound', found: reason instanceof Error ? reason.message : String(reason) }
  }
}

/** Lets what sounds, or is about to, fall silent at once and without a click. */
export function silence(): void {
  turn++
  if (sounding === null || output === null) return
  const ended = sounding
  sounding = null
  ended.stop(output.context.currentTime)
  setTimeout(() => ended.disconnect(), 1000 * (stopFadeS + leadS))
  restAfter(stopFadeS)
}

/** Follows the level control. */
export function setLevel(level: number): void {
  // The limiter brings the whole to the limit, so the level works as a part of it.
  output?.level.gain.setTargetAtTime(
    gainOfLevel(level) / levelLimit,
    output.context.currentTime,
    levelFollowsS,
  )
}

function newOutput(): Output {
  const context = new AudioContext({ latencyHint: 'interactive' })
  const level = new GainNode(context, { gain: 0 })
  level.connect(limiter(context)).connect(context.destination)
  return { context, level }
}

async function answered(resumed: Promise<void>): Promise<void> {
  let timer: ReturnType<typeof setTimeout> | undefined
  const impatience = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error('a sound device that does not answer')), patienceMs)
  })
  await Promise.race([resumed, impatience]).finally(() => clearTimeout(timer))
}

/** Lets the context rest once what sounds is over. */
function restAfter(lengthS: number): void {
  clearTimeout(resting)
  resting = setTimeout(() => void output?.context.suspend(), 1000 * (lengthS + 2 * leadS))
}
