/** Where work is asked for: one piece at a time, and of each kind only the newest waits. */
export interface NewestFirst {
  /**
   * Asks for work of a kind; a lower number goes before a higher one. Resolves with `null` when newer work of the
   * same kind came while it waited.
   */
  readonly ask: <Value>(kind: number, work: () => Promise<Value>) => Promise<Value | null>
}

interface Waiting {
  readonly begin: () => Promise<void>
  readonly drop: () => void
}

/** Work in turn for one worker, which can do but one thing at a time and must not fall behind who is typing. */
export function newestFirst(): NewestFirst {
  const waiting = new Map<number, Waiting>()
  let busy = false

  const next = async (): Promise<void> => {
    if (busy) return
    const first = [...waiting.keys()].sort((a, b) => a - b)[0]
    if (first === undefined) return
    const { begin } = waiting.get(first)!
    waiting.delete(first)
    busy = true
    await begin()
    busy = false
    void next()
  }

  return {
    ask: (kind, work) =>
      new Promise((resolve, reject) => {
        waiting.get(kind)?.drop()
        waiting.set(kind, {
          begin: () => work().then(resolve, reject),
          drop: () => resolve(null),
        })
        void next()
      }),
  }
}
