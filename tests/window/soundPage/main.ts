import { gainOfLevel, levelLimit } from '#shared/sound/level.ts'
import type { Piece } from '#shared/sound/piece.ts'
import { limiter, soundPiece } from '../../../src-renderer/sound/soundPiece.ts'

export interface RenderRequest {
  readonly piece: Piece
  readonly level: number
  readonly sampleHz: number
  readonly stopAtS: number | null
}

/** A piece as the loudspeaker would get it, as the bytes of 32-bit samples in base64. */
async function rendered({ piece, level, sampleHz, stopAtS }: RenderRequest): Promise<string> {
  const context = new OfflineAudioContext(1, Math.ceil((piece.lengthS + 0.1) * sampleHz), sampleHz)
  const gain = new GainNode(context, { gain: gainOfLevel(level) / levelLimit })
  gain.connect(limiter(context)).connect(context.destination)
  const sounding = soundPiece(context, gain, piece, 0)
  if (stopAtS !== null) sounding.stop(stopAtS)
  const samples = (await context.startRendering()).getChannelData(0)
  const bytes = new Uint8Array(samples.buffer)
  let text = ''
  for (let i = 0; i < bytes.length; i += 32_768) text += String.fromCharCode(...bytes.subarray(i, i + 32_768))
  return btoa(text)
}

/** The sound of the window, alone on a page, where a test can ask for it. */
Object.assign(globalThis, { rendered })
