import { useStore } from 'zustand'
import { useWorkbook } from './workbookStore.ts'

/** Names of the steps that undo and redo would take; `null` where there is none. */
export function useHistory(): { readonly undo: string | null; readonly redo: string | null } {
  const step = useWorkbook((state) => state.step)
  const canUndo = useStore(useWorkbook.temporal, (history) => history.pastStates.length > 0)
  const redo = useStore(useWorkbook.temporal, (history) => history.futureStates.at(-1)?.step ?? null)
  return { undo: canUndo ? step : null, redo }
}
