import { create } from 'zustand'

/** What takes each value that was typed and not yet taken. */
const waiting = new Set<() => void>()

/** How many values are typed and wait to be taken. */
export const useWaiting = create<{ readonly count: number }>()(() => ({ count: 0 }))

/** Has a typed value taken when `takeWaitingEntries` is called, until the returned function is. */
export function awaitTaking(take: () => void): () => void {
  waiting.add(take)
  useWaiting.setState({ count: waiting.size })
  return () => {
    waiting.delete(take)
    useWaiting.setState({ count: waiting.size })
  }
}

/** Takes every value that was typed and still waits for its pause: what is saved is what is seen. */
export function takeWaitingEntries(): void {
  for (const take of [...waiting]) take()
}
