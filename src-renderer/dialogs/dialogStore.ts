import { create } from 'zustand'

/** The dialog that is open, if any. */
export interface DialogState {
  readonly open:
    | null
    | 'newDesign'
    | 'newWorkbook'
    | 'air'
    | 'help'
    | 'changeSystem'
    | 'temperament'
    | 'settings'
    | 'leftWork'
    | 'loops'
    | 'report'
    | 'find'
}

export const useDialog = create<DialogState>()(() => ({ open: null }))

export function closeDialog(): void {
  useDialog.setState({ open: null })
}
