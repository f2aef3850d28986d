import { type ReactNode, useState } from 'react'
import type { MenuCommand } from '#shared/bridge/bridge.ts'
import { renameWorkbook } from '#shared/workbook/commands/workbookCommands.ts'
import { bridge } from '../bridge/bridge.ts'
import { keysOf } from '../bridge/keysOf.ts'
import { useDialog } from '../dialogs/dialogStore.ts'
import { type Action, Actions } from '../fields/Actions.tsx'
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

function item(name: MenuCommand, text: string): Action {
  return { text, keys: keysOf(name), act: commands[name] }
}

/** The file commands, where no menu bar has them. */
function FileMenu(): ReactNode {
  return (
    <Actions
      label={words.file}
      text={words.fileShown}
      items={[
        item('new', words.newWorkbook),
        item('open', words.open),
        item('startPage', words.startPage),
        item('save', words.save),
        item('saveAs', words.saveAs),
        item('report', reportWords.open),
        item('palette', words.find),
        item('settings', words.settings),
        item('help', words.help),
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
        title={keysOf('palette')}
        onClick={() => useDialog.setState({ open: 'find' })}
      >
        {words.find}
      </button>
      <button
        type="button"
        className="quiet"
        disabled={undoName === null}
        title={words.withKeys(words.undo(undoName), keysOf('undo'))}
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
        title={words.withKeys(words.redo(redoName), keysOf('redo'))}
        aria-label={words.redo(redoName)}
        onClick={redo}
      >
        {words.redo(null)}
        {redoName === null ? null : <span className="step">{words.step(redoName)}</span>}
      </button>
    </div>
  )
}
