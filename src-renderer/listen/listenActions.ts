import type { Piece } from '#shared/sound/piece.ts'
import { play, setLevel, silence } from '../sound/player.ts'
import { useView } from '../state/viewStore.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { useLevel, useListen } from './listenStore.ts'

let ending: ReturnType<typeof setTimeout> | undefined

/** Plays a piece for the control `key`; pressed again while it sounds, it stops. */
export async function listenTo(key: string, piece: Piece): Promise<void> {
  const again = useListen.getState().playing?.key === key
  stopListening()
  if (again || piece.tones.length === 0 || document.hidden) return
  const playing = { key, piece, startsAtMs: null }
  useListen.setState({ playing, trouble: null })
  const answer = await play(piece, useLevel.getState().level)
  if (useListen.getState().playing !== playing) return
  if (answer.kind === 'noSound') useListen.setState({ playing: null, trouble: answer.found })
  if (answer.kind !== 'playing') return
  const { startsInS } = answer
  useListen.setState({ playing: { key, piece, startsAtMs: performance.now() + 1000 * startsInS } })
  ending = setTimeout(() => useListen.setState({ playing: null }), 1000 * (startsInS + piece.lengthS))
}

/** Silence, whatever sounds or is about to. */
export function stopListening(): void {
  clearTimeout(ending)
  silence()
  if (useListen.getState().playing !== null) useListen.setState({ playing: null })
}

/** Sets the level; what sounds follows. */
export function listenAt(level: number): void {
  useLevel.setState({ level })
  setLevel(level)
}

/** Closes the panel; what sounds stops with it. */
export function closeListen(): void {
  stopListening()
  useListen.setState({ open: false })
}

// Whatever takes the person elsewhere ends the sound: another page or cell, a change, a hidden window, Escape.
useView.subscribe((now, before) => {
  const moved = now.page !== before.page || now.selection !== before.selection
  if (moved || now.designId !== before.designId) stopListening()
})
useWorkbook.subscribe((now, before) => {
  if (now.workbook !== before.workbook) stopListening()
})
document.addEventListener('visibilitychange', () => {
  if (document.hidden) stopListening()
})
window.addEventListener('pagehide', stopListening)
window.addEventListener(
  'keydown',
  ({ key }) => {
    if (key === 'Escape') stopListening()
  },
  { capture: true },
)
