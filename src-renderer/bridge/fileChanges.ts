import type { FileChange } from '#shared/bridge/bridge.ts'

type Listener = (change: FileChange) => void

/** Looks at the current file whenever the person comes back to the page: that is when it may have been changed. */
export function fileChanges(lookAgain: () => Promise<FileChange | null>): (listener: Listener) => () => void {
  const listeners = new Set<Listener>()
  const look = async (): Promise<void> => {
    if (document.visibilityState !== 'visible' || listeners.size === 0) return
    const change = await lookAgain()
    if (change !== null) for (const listener of listeners) listener(change)
  }
  window.addEventListener('focus', () => void look())
  document.addEventListener('visibilitychange', () => void look())
  return (listener) => {
    listeners.add(listener)
    return () => void listeners.delete(listener)
  }
}
