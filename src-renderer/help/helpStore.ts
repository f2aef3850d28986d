import { create } from 'zustand'
import { useDialog } from '../dialogs/dialogStore.ts'

export type HelpPart = 'steps' | 'keys' | 'words' | 'formulas'

/** Which part of the help is open, and the entry that it was opened for. */
export interface HelpState {
  readonly part: HelpPart
  readonly at: string | null
}

export const useHelp = create<HelpState>()(() => ({ part: 'keys', at: null }))

/** Opens the help at a part, and at a word or formula of it. */
export function openHelp(part: HelpPart, at: string | null = null): void {
  useHelp.setState({ part, at })
  useDialog.setState({ open: 'help' })
}
