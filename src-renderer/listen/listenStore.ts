import { create } from 'zustand'
import { persist } from 'zustand/middleware'
import { keptLevel, startingLevel } from '#shared/sound/level.ts'
import type { Piece } from '#shared/sound/piece.ts'

/** What sounds, and since when. */
export interface Playing {
  /** Which control asked for it. */
  readonly key: string
  readonly piece: Piece
  /** When its first tone begins, as `performance.now()`; `null` until the sound device has answered. */
  readonly startsAtMs: number | null
}

export interface ListenState {
  readonly open: boolean
  readonly playing: Playing | null
  /** Why nothing can be heard, until the next press. */
  readonly trouble: string | null
}

export const useListen = create<ListenState>()(() => ({ open: false, playing: null, trouble: null }))

/** The level stays as a person set it; nothing else of listening is kept. */
export const useLevel = create<{ readonly level: number }>()(
  persist((): { level: number } => ({ level: startingLevel }), {
    name: 'ferrule level',
    merge: (kept) => ({ level: keptLevel((kept as { level?: unknown } | undefined)?.level) }),
  }),
)
