import type { ReactNode } from 'react'
import { doneWord } from '../words/dialogs.ts'
import { closeDialog } from './dialogStore.ts'

/** Closes a dialog whose values were taken as they were typed. */
export function DoneButton(): ReactNode {
  return (
    <div className="buttons">
      <button type="button" className="main" onClick={closeDialog}>
        {doneWord}
      </button>
    </div>
  )
}
