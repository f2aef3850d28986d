import type { ReactNode } from 'react'
import { useDialog } from '../dialogs/dialogStore.ts'
import { save, useDirty } from '../state/fileActions.ts'
import { keepingWords } from '../words/keeping.ts'
import { useRecovery } from './recovery.ts'
import './keeping.css'

/** Above the workbook: that left work waits, and that new work cannot be kept aside. */
export function KeepingNotices(): ReactNode {
  const { left, isPutOff, cannotKeep } = useRecovery()
  const dirty = useDirty()
  return (
    <>
      {left.length > 0 && !isPutOff ? (
        <p className="keepingNotice" role="status">
          <span>{keepingWords.notice(left.length)}</span>
          <button type="button" onClick={() => useDialog.setState({ open: 'leftWork' })}>
            {keepingWords.show}
          </button>
          <button type="button" onClick={() => useRecovery.setState({ isPutOff: true })}>
            {keepingWords.later}
          </button>
        </p>
      ) : null}
      {cannotKeep && dirty ? (
        <p className="keepingNotice" role="alert">
          <span>{keepingWords.cannotKeep}</span>
          <button type="button" onClick={() => void save()}>
            {keepingWords.save}
          </button>
        </p>
      ) : null}
    </>
  )
}
