import { useStore } from 'zustand'
import { useWorkbook } from './workbookStore.ts'

/** Names of the steps that undo and redo would take; `null` where there is none. */
export interface HistorySteps {
  readonly undo: string | null
  readonly redo: string | null
}

export function historyNow(): HistorySteps {
  const { pastStates, futureStates } = useWorkbook.temporal.getState()
  const undo = pastStates.length > 0 ? useWorkbook.getState().step : null
  return { undo, redo: futureStates.at(-1)?.step ?? null }
}

/** Hook form of `historyNow`. */
export function useHistory(): HistorySteps {
  const step = useWorkbook((state) => state.step)
  const canUndo = useStore(useWorkbook.temporal, (history) => history.pastStates.length > 0)
  const redo = useStore(useWorkbook.temporal, (history) => history.futureStates.at(-1)?.step ?? null)
  return { undo: canUndo ? step : null, redo }
}
