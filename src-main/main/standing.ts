import type { WindowState } from '#shared/bridge/bridge.ts'

/** A window that shows no workbook, or has not said anything. */
export const emptyState: WindowState = { name: '', dirty: false, undo: null, redo: null, hasWorkbook: false }

/** In milliseconds: what a busy window needs to answer, and what a person waits for one that hangs. */
const patience = 1000

/** How the window stands, by its own word. */
export interface Standing {
  /** What it last said; nothing yet is `emptyState`. */
  readonly last: WindowState
  said(state: WindowState): void
  /** Whether there is work to lose. The window is asked, which may not have said yet what was just done. */
  isDirty(): Promise<boolean>
}

/** `question` makes the window say how it stands. */
export function standingOf(question: () => void): Standing {
  let last = emptyState
  let heard = (): void => undefined
  return {
    get last() {
      return last
    },
    said: (state) => {
      last = state
      heard()
    },
    isDirty: async () => {
      if (last === emptyState || last.dirty) return last.dirty
      let limit: NodeJS.Timeout | undefined
      await new Promise<void>((resolve) => {
        heard = resolve
        limit = setTimeout(resolve, patience)
        question()
      })
      clearTimeout(limit)
      return last.dirty
    },
  }
}
