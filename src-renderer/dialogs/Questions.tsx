import type { ReactNode } from 'react'
import { save, saveAs, useFile } from '../state/fileActions.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { questionWords as words } from '../words/dialogs.ts'
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
      <p className="soft">{words.stillOpen}</p>
      <div className="buttons">
        <button type="button" className="main" onClick={close}>
          {words.close}
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
    <Dialog title={words.saveTitle(name)} onClose={close}>
      <p>{words.unsaved}</p>
      <div className="buttons">
        <button
          type="button"
          className="main"
          onClick={() => void save().then((kept) => (kept ? proceed() : undefined))}
        >
          {words.save}
        </button>
        <button type="button" onClick={proceed}>
          {words.dontSave}
        </button>
        <button type="button" onClick={close}>
          {words.cancel}
        </button>
      </div>
    </Dialog>
  )
}
