import type { ReactNode } from 'react'
import { save, saveAs, useFile } from '../state/fileActions.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { compareWords } from '../words/keeping.ts'
import { Dialog } from './Dialog.tsx'

/** Something that went wrong, said until it is read. */
export function TroubleDialog(): ReactNode {
  const trouble = useFile((state) => state.trouble)
  if (trouble === null) return null
  const close = (): void => useFile.setState({ trouble: null })
  return (
    <Dialog title={trouble.title} onClose={close}>
      <p className="trouble">{trouble.message}</p>
      <p className="soft">What was open is still open, unchanged.</p>
      <div className="buttons">
        <button type="button" className="main" onClick={close}>
          Close
        </button>
        {trouble.canSaveElsewhere === true ? (
          <button
            type="button"
            onClick={() => {
              close()
              void saveAs()
            }}
          >
            {compareWords.saveAs}
          </button>
        ) : null}
      </div>
    </Dialog>
  )
}

/** Asks about unsaved work before something replaces it. */
export function UnsavedDialog(): ReactNode {
  const pending = useFile((state) => state.pending)
  const name = useWorkbook((state) => state.workbook?.name ?? '')
  if (pending === null) return null
  const close = (): void => useFile.setState({ pending: null })
  const proceed = (): void => {
    close()
    pending()
  }
  return (
    <Dialog title={`Save ${name === '' ? 'the workbook' : name}?`} onClose={close}>
      <p>It has changes that no file holds.</p>
      <div className="buttons">
        <button
          type="button"
          className="main"
          onClick={() => void save().then((kept) => (kept ? proceed() : undefined))}
        >
          Save
        </button>
        <button type="button" onClick={proceed}>
          Don’t save
        </button>
        <button type="button" onClick={close}>
          Cancel
        </button>
      </div>
    </Dialog>
  )
}
