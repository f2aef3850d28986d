import { useEffect, useState } from 'react'
import { partsAt } from '#shared/sound/piece.ts'
import { useListen } from './listenStore.ts'

const lookEveryMs = 60

const none: readonly number[] = []

/** The parts of the piece of one control that sound at this moment; none while another control's piece sounds. */
export function useSoundingParts(key: string): readonly number[] {
  const playing = useListen((state) => (state.playing?.key === key ? state.playing : null))
  const [parts, setParts] = useState(none)
  useEffect(() => {
    if (playing === null || playing.startsAtMs === null) return
    const { piece, startsAtMs } = playing
    const look = (): void => {
      const now = partsAt(piece, (performance.now() - startsAtMs) / 1000)
      setParts((before) => (before.join() === now.join() ? before : now))
    }
    const timer = setInterval(look, lookEveryMs)
    return () => {
      clearInterval(timer)
      setParts(none)
    }
  }, [playing])
  return parts
}
