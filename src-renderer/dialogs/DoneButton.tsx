import type { ReactNode } from 'react'
import { closeDialog } from './dialogStore.ts'

/** Closes a dialog whose values were taken as they were typed. */
export function DoneButton(): ReactNode {
  return (
    <div className="buttons">
      <button type="button" className="main" onClick={closeDialog}>
        Done
      </button>
    </div>
  )
}
