import { levelLimit } from '#shared/sound/level.ts'
import { fadeCurve, fadeInS, fadeOutS, type Piece, stopFadeS, type Tone } from '#shared/sound/piece.ts'
import { warmPartials } from '#shared/sound/warmTone.ts'

/** A piece put into an audio context: where to hear it, how to end it. */
export interface SoundingPiece {
  /** When the last of it has faded, in the context's time. */
  readonly endS: number
  /** Lets all of it fall silent from `atS` on. */
  stop(atS: number): void
  /** Takes it out of the context. */
  disconnect(): void
}

/** Puts a piece into an audio context, live or offline, to begin at `startS` and to be heard through `output`. */
export function soundPiece(
  context: BaseAudioContext,
  output: AudioNode,
  piece: Piece,
  startS: number,
): SoundingPiece {
  const all = new GainNode(context, { gain: 1 })
  all.connect(output)
  const voices = piece.tones.map((tone) => soundTone(context, all, tone, startS))
  return {
    endS: startS + piece.lengthS,
    stop: (atS) => {
      all.gain.setValueAtTime(1, atS)
      all.gain.linearRampToValueAtTime(0, atS + stopFadeS)
      for (const voice of voices) voice.stop(atS + stopFadeS)
    },
    disconnect: () => all.disconnect(),
  }
}

/** Points of a fade: enough that the straight lines between them are not heard. */
const fadeUp = Float32Array.from(fadeCurve(129))
const fadeDown = fadeUp.toReversed()

function soundTone(context: BaseAudioContext, output: AudioNode, tone: Tone, startS: number): OscillatorNode {
  const fromS = startS + tone.startS
  const toS = fromS + tone.durationS
  const voice = new OscillatorNode(context, { frequency: tone.hz, periodicWave: wave(context, tone) })
  const gain = new GainNode(context, { gain: 0 })
  gain.gain.setValueAtTime(0, 0)
  gain.gain.setValueCurveAtTime(fadeUp, fromS, fadeInS)
  gain.gain.setValueCurveAtTime(fadeDown, toS - fadeOutS, fadeOutS)
  voice.connect(gain).connect(output)
  voice.start(fromS)
  voice.stop(toS)
  return voice
}

/** The tone's partials as they are: evening them out would undo the sum that keeps them within the limit. */
function wave(context: BaseAudioContext, { hz, share }: Tone): PeriodicWave {
  const imag = Float32Array.from([0, ...warmPartials(hz).map((amplitude) => share * amplitude)])
  return new PeriodicWave(context, {
    real: new Float32Array(imag.length),
    imag,
    disableNormalization: true,
  })
}

/**
 * The last node before the loudspeaker. A signal of ±1 leaves it at the level limit, and one beyond is cut off
 * there; the level control stands before it, so nothing can get past.
 */
export function limiter(context: BaseAudioContext): WaveShaperNode {
  return new WaveShaperNode(context, { curve: Float32Array.of(-levelLimit, levelLimit) })
}
