import { type ReactNode, useState } from 'react'
import { renameWorkbook } from '#shared/workbook/commands/workbookCommands.ts'
import { bridge } from '../bridge/bridge.ts'
import { onMac } from '../bridge/keyCommands.ts'
import { useDialog } from '../dialogs/dialogStore.ts'
import { Actions } from '../fields/Actions.tsx'
import { tryRun } from '../fields/refusal.ts'
import { TextField } from '../fields/TextField.tsx'
import { useDirty, useFile } from '../state/fileActions.ts'
import { useHistory } from '../state/history.ts'
import { commands } from '../state/useForm.ts'
import { redo, undo, useWorkbook } from '../state/workbookStore.ts'
import { reportWords } from '../words/report.ts'
import { stripWords as words } from '../words/strip.ts'
import { Targets } from './Targets.tsx'

/** The strip on top: the workbook's name and state, the targets, undo and redo. */
export function Header(): ReactNode {
  const isOpen = useWorkbook((state) => state.workbook !== null)
  if (!isOpen) return null
  return (
    <header className="strip">
      <div className="stripFile">
        {bridge.form === 'browser' ? <FileMenu /> : null}
        <WorkbookName />
      </div>
      <Targets />
      <HistoryButtons />
    </header>
  )
}

const mainKey = onMac ? '⌘' : 'Ctrl+'

/** The file commands, where no menu bar has them. */
function FileMenu(): ReactNode {
  return (
    <Actions
      label={words.file}
      text={words.fileShown}
      items={[
        { text: words.newWorkbook, act: commands.new },
        { text: words.open, keys: `${mainKey}O`, act: commands.open },
        { text: words.startPage, act: commands.startPage },
        { text: words.save, keys: `${mainKey}S`, act: commands.save },
        { text: words.saveAs, keys: `${mainKey}Shift+S`, act: commands.saveAs },
        { text: reportWords.open, act: commands.report },
        { text: words.find, keys: `${mainKey}K`, act: commands.palette },
        { text: words.settings, act: commands.settings },
        { text: words.help, keys: 'F1', act: commands.help },
      ]}
    />
  )
}

function WorkbookName(): ReactNode {
  const name = useWorkbook((state) => state.workbook?.name ?? '')
  const fileName = useFile((state) => state.fileName)
  const dirty = useDirty()
  const [renaming, setRenaming] = useState(false)
  if (renaming) {
    return (
      <TextField
        label={words.workbookName}
        labelHidden
        autoFocus
        className="workbookName"
        value={name}
        take={(value) => tryRun(renameWorkbook(value))}
        onDone={() => setRenaming(false)}
      />
    )
  }
  return (
    <button
      type="button"
      className="workbookName"
      title={words.nameHelp(fileName, dirty)}
      onClick={() => setRenaming(true)}
    >
      <span>{name === '' ? words.nameless : name}</span>
      {dirty ? (
        <span className="dirty" role="img" aria-label={words.notSaved}>
          ●
        </span>
      ) : null}
    </button>
  )
}

function HistoryButtons(): ReactNode {
  const { undo: undoName, redo: redoName } = useHistory()
  return (
    <div className="history">
      <button
        type="button"
        className="quiet"
        title={`${mainKey}K`}
        onClick={() => useDialog.setState({ open: 'find' })}
      >
        {words.find}
      </button>
      <button
        type="button"
        className="quiet"
        disabled={undoName === null}
        title={words.withKeys(words.undo(undoName), `${mainKey}Z`)}
        aria-label={words.undo(undoName)}
        onClick={undo}
      >
        {words.undo(null)}
        {undoName === null ? null : <span className="step">{words.step(undoName)}</span>}
      </button>
      <button
        type="button"
        className="quiet"
        disabled={redoName === null}
        title={words.withKeys(words.redo(redoName), `${mainKey}Shift+Z`)}
        aria-label={words.redo(redoName)}
        onClick={redo}
      >
        {words.redo(null)}
        {redoName === null ? null : <span className="step">{words.step(redoName)}</span>}
      </button>
    </div>
  )
}
