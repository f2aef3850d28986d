import type { ReactNode } from 'react'
import { Dialog } from '../dialogs/Dialog.tsx'
import { closeDialog } from '../dialogs/dialogStore.ts'
import { keepingWords } from '../words/keeping.ts'
import { LeftWork } from './LeftWork.tsx'
import { useRecovery } from './recovery.ts'

/** Left work, where a workbook is open already. */
export function LeftWorkDialog(): ReactNode {
  const isNone = useRecovery((state) => state.left.length === 0)
  return (
    <Dialog title={keepingWords.heading} onClose={closeDialog} wide>
      {isNone ? <p>{keepingWords.none}</p> : <LeftWork onActed={closeDialog} />}
      <div className="buttons">
        <button type="button" onClick={closeDialog}>
          {keepingWords.close}
        </button>
      </div>
    </Dialog>
  )
}
