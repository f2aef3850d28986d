/** Unsaved work is kept aside this long after the last change, ms. */
export const draftPauseMs = 1000

/** While changes go on without a pause, it is kept this often, ms. */
export const draftLongestMs = 5000

/** Decides when unsaved work is kept aside. */
export interface DraftKeeper {
  changed(): void
  /** Keeps at once what waits to be kept. */
  now(): void
}

/** Calls `keep` soon after a change, and while changes go on without a pause, every few seconds. */
export function draftKeeper(keep: () => void): DraftKeeper {
  let timer: ReturnType<typeof setTimeout> | undefined
  let firstAt: number | null = null

  function now(): void {
    if (firstAt === null) return
    clearTimeout(timer)
    firstAt = null
    keep()
  }

  return {
    changed: () => {
      firstAt ??= Date.now()
      clearTimeout(timer)
      timer = setTimeout(now, Math.max(0, Math.min(draftPauseMs, firstAt + draftLongestMs - Date.now())))
    },
    now,
  }
}
