import { useEffect } from 'react'
import type { MenuCommand, WindowState } from '#shared/bridge/bridge.ts'
import { shownName } from '#shared/bridge/shownName.ts'
import { bridge } from '../bridge/bridge.ts'
import { useDialog } from '../dialogs/dialogStore.ts'
import { useKeeping } from '../keeping/useKeeping.ts'
import { dialogIsOpen } from '../look/dialogIsOpen.ts'
import { filesWords } from '../words/files.ts'
import {
  isDirty,
  openByDialog,
  save,
  saveAs,
  startWorkbook,
  takeArrived,
  useDirty,
  useFile,
  whenKept,
} from './fileActions.ts'
import { historyNow, useHistory } from './history.ts'
import { takeWaitingEntries } from './waitingEntries.ts'
import { redo, undo, useWorkbook } from './workbookStore.ts'

/** What each command of the menus does. */
export const commands: Readonly<Record<MenuCommand, () => void>> = {
  new: () => whenKept(() => useDialog.setState({ open: 'newWorkbook' })),
  open: openByDialog,
  save: () => void save(),
  saveAs: () => void saveAs(),
  saveThenClose: () => void saveThenClose(),
  undo,
  redo,
  print: () => print('printer'),
  pdf: () => print('pdf'),
  help: () => useDialog.setState({ open: 'help' }),
  palette: openFind,
  report: () => useDialog.setState({ open: 'report' }),
  settings: () => useDialog.setState({ open: 'settings' }),
  startPage: () => whenKept(() => startWorkbook(null)),
}

/** Closes once everything is kept: what is edited while a file is written is written, too. */
async function saveThenClose(): Promise<void> {
  do {
    if (!(await save())) return
    takeWaitingEntries()
  } while (isDirty())
  await bridge.closeWindow()
}

/** Looks for something, unless a dialog waits for an answer. */
function openFind(): void {
  if (!dialogIsOpen()) useDialog.setState({ open: 'find' })
}

/** Whether a job is on the bench whose sheet can be printed. */
export function sheetIsReady(): boolean {
  return document.querySelector('.onPaper') !== null
}

/** Prints the sheet of the job on the bench; elsewhere asks what of the workbook is wanted on paper. */
function print(to: 'printer' | 'pdf'): void {
  if (!sheetIsReady()) useDialog.setState({ open: 'report' })
  else void import('../bench/sheet/paper.ts').then(({ printSheet }) => printSheet(to, nameOfWorkbook()))
}

function nameOfWorkbook(): string {
  return useWorkbook.getState().workbook?.name ?? filesWords.program
}

/** Joins the window to the form it runs in: menus, files that arrive, title and dirty mark, kept work. */
export function useForm(): void {
  useKeeping()
  const workbook = useWorkbook((state) => state.workbook)
  const fileName = useFile((state) => state.fileName)
  const dirty = useDirty()
  const { undo: undoStep, redo: redoStep } = useHistory()

  useEffect(() => bridge.onCommand((command) => commands[command]()), [])
  useEffect(() => bridge.onFile(takeArrived), [])
  const name = fileName ?? workbook?.name ?? ''
  const hasWorkbook = workbook !== null
  useEffect(
    () => show({ name, dirty, undo: undoStep, redo: redoStep, hasWorkbook }),
    [name, hasWorkbook, dirty, undoStep, redoStep],
  )
  useEffect(() => bridge.onClosing(showBeforeClosing), [])
}

/** Shows how the window stands though it may not be drawn so yet, with what is typed taken. */
function showBeforeClosing(): void {
  takeWaitingEntries()
  const { workbook } = useWorkbook.getState()
  const name = useFile.getState().fileName ?? workbook?.name ?? ''
  show({ ...historyNow(), name, dirty: isDirty(), hasWorkbook: workbook !== null })
}

function show(state: WindowState): void {
  const { hasWorkbook, name } = state
  const shown = { ...state, name: shownName(name), undo: shownStep(state.undo), redo: shownStep(state.redo) }
  // A form that cannot take the state is still not to close on unsaved work.
  void bridge.showState(shown).catch(() => bridge.showState({ ...nothingNamed, hasWorkbook }))
}

const nothingNamed = { name: '', dirty: true, undo: null, redo: null } as const

function shownStep(step: string | null): string | null {
  return step === null ? null : shownName(step)
}
