/** What takes each value that was typed and not yet taken. */
const waiting = new Set<() => void>()

/** Has a typed value taken when `takeWaitingEntries` is called, until the returned function is. */
export function awaitTaking(take: () => void): () => void {
  waiting.add(take)
  return () => void waiting.delete(take)
}

/** Takes every value that was typed and still waits for its pause: what is saved is what is seen. */
export function takeWaitingEntries(): void {
  for (const take of [...waiting]) take()
}
