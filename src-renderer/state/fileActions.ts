import { create } from 'zustand'
import type { OpenAnswer, SaveAnswer } from '#shared/bridge/bridge.ts'
import { fileNameFor, workbookEnding } from '#shared/bridge/fileName.ts'
import { recorded } from '#shared/workbook/commands/command.ts'
import { openWorkbook } from '#shared/workbook/openWorkbook.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { writeWorkbook } from '#shared/workbook/writeWorkbook.ts'
import { bridge } from '../bridge/bridge.ts'
import { readFile } from '../bridge/readFile.ts'
import { filesWords as words } from '../words/files.ts'
import { keepingWords } from '../words/keeping.ts'
import { forgetEarlierWorkbook } from './perWorkbook.ts'
import { useView } from './viewStore.ts'
import { takeWaitingEntries, useWaiting } from './waitingEntries.ts'
import { run, showWorkbook, useWorkbook } from './workbookStore.ts'

/** The file behind the workbook, and what is being said or asked about it. */
export interface FileState {
  /** The workbook as it was last read or written; `null` when it never was. */
  readonly saved: Workbook | null
  /** Name of the current file; `null` when there is none. */
  readonly fileName: string | null
  /** Something that went wrong, until it is read. */
  readonly trouble: Trouble | null
  /** What waits for an answer about unsaved work. */
  readonly pending: (() => void) | null
}

export interface Trouble {
  readonly title: string
  readonly message: string
  /** The work can still be saved somewhere else. */
  readonly canSaveElsewhere?: boolean
}

export const useFile = create<FileState>()(() => ({
  saved: null,
  fileName: null,
  trouble: null,
  pending: null,
}))

/** Whether the open workbook holds work that no file has. */
export function isDirty(): boolean {
  const { workbook } = useWorkbook.getState()
  return workbook !== null && workbook !== useFile.getState().saved
}

/** Hook form of `isDirty`; a value that is typed and not yet taken is work that no file has, too. */
export function useDirty(): boolean {
  const saved = useFile((state) => state.saved)
  const isTyping = useWaiting((state) => state.count > 0)
  return useWorkbook(({ workbook }) => workbook !== null && (isTyping || workbook !== saved))
}

/** Does something that replaces the open workbook, after asking about unsaved work. */
export function whenKept(proceed: () => void): void {
  takeWaitingEntries()
  if (isDirty()) useFile.setState({ pending: proceed })
  else proceed()
}

/** Shows a workbook that has no file yet: an example counts as unsaved once it is edited, a new one (`unsaved`) at once. */
export function startWorkbook(workbook: Workbook | null, { unsaved = false } = {}): void {
  void bridge.releaseFile()
  show(workbook, unsaved ? null : workbook, null)
}

/** Counts what was shown: what is written after another workbook has taken its place is not that one's file. */
let shownCount = 0

function show(workbook: Workbook | null, saved: Workbook | null, fileName: string | null): void {
  shownCount++
  showWorkbook(workbook)
  forgetEarlierWorkbook()
  useFile.setState({ saved, fileName, trouble: null, pending: null })
  useView.setState({
    designId: workbook?.designs[0]?.id ?? null,
    selection: null,
    loopId: null,
    hidden: new Set(),
  })
}

/** Shows a workbook as its file holds it. The file is current already. */
export function showOpened(workbook: Workbook, fileName: string): void {
  show(workbook, workbook, fileName)
}

/** Shows work kept from before. Where its file is current, the file's version is one undo away. */
export function showRestored(
  workbook: Workbook,
  file: { readonly workbook: Workbook; readonly name: string } | null,
): void {
  if (file === null) {
    show(workbook, null, null)
    return
  }
  show(file.workbook, file.workbook, file.name)
  if (writeWorkbook(workbook) !== writeWorkbook(file.workbook))
    run(recorded(keepingWords.restoredStep, () => workbook))
}

/** Takes over the version that another program wrote to the current file, as a step that can be undone. */
export function takeOver(workbook: Workbook): void {
  run(recorded(keepingWords.tookFileStep, () => workbook))
  useFile.setState({ saved: workbook })
  if (!workbook.designs.some(({ id }) => id === useView.getState().designId))
    useView.setState({ designId: workbook.designs[0]?.id ?? null, selection: null, loopId: null })
}

/** Opens a file by the form's own dialog. */
export function openByDialog(): void {
  whenKept(() => void bridge.openWorkbook().then(takeAnswer))
}

/** Opens a file of the recent list. */
export function openRecent(id: string): void {
  whenKept(() => void bridge.openRecent(id).then(takeAnswer))
}

/** Shows what a form read, or says why not; what was open stays open unless the new text is a workbook. */
function takeAnswer(answer: OpenAnswer): void {
  showing(answer)?.()
}

/** Takes a file that comes unasked: only one that can be shown has unsaved work asked about. */
export function takeArrived(answer: OpenAnswer): void {
  const proceed = showing(answer)
  if (proceed !== null) whenKept(proceed)
}

/** What shows the workbook of a file; `null`, and the reason said, when there is none in it. */
function showing(answer: OpenAnswer): (() => void) | null {
  if (answer.kind === 'cancelled') return null
  if (answer.kind === 'failed') {
    useFile.setState({ trouble: { title: words.notRead, message: answer.message } })
    return null
  }
  const { name, text, ticket } = answer
  const workbook = accepted(name, text)
  return workbook && (() => void bridge.adoptFile(ticket).then(() => show(workbook, workbook, name)))
}

/** Shows a workbook dropped on the window. It has no place to be saved back to: saving asks for one. */
export async function takeDropped(file: File): Promise<void> {
  const answer = await readFile(file)
  const workbook =
    answer.kind === 'failed' ? refuse(file.name, answer.message) : accepted(file.name, answer.text)
  if (workbook === null) return
  whenKept(() => void bridge.releaseFile().then(() => show(workbook, workbook, file.name)))
}

/** The workbook that a text holds; `null`, and the reason said, when it holds none. */
function accepted(name: string, text: string): Workbook | null {
  const opened = openWorkbook(text)
  if (opened.ok) return opened.workbook
  const { kind, message } = opened.failure
  return refuse(name, kind === 'notFerrule' ? words.notFerrule(message) : message)
}

function refuse(name: string, message: string): null {
  useFile.setState({ trouble: { title: words.notOpened(name), message } })
  return null
}

/** Saves to the current file, or asks for one. Says whether the work is kept. */
export function save(): Promise<boolean> {
  return write((text, name) => bridge.saveWorkbook(text, name))
}

/** Saves under another name. */
export function saveAs(): Promise<boolean> {
  return write((text, name) => bridge.saveWorkbookAs(text, name))
}

async function write(
  by: (text: string, name: string) => ReturnType<typeof bridge.saveWorkbook>,
): Promise<boolean> {
  takeWaitingEntries()
  const { workbook } = useWorkbook.getState()
  if (workbook === null) return true
  const countAtStart = shownCount
  const answer = await by(writeWorkbook(workbook), fileNameFor(workbook.name, workbookEnding)).catch(
    (): SaveAnswer => ({ kind: 'failed', message: keepingWords.notAnswered }),
  )
  if (answer.kind === 'saved') {
    if (shownCount === countAtStart) useFile.setState({ saved: workbook, fileName: answer.name })
    return true
  }
  if (answer.kind === 'failed') {
    const { message } = answer
    useFile.setState({ trouble: { title: words.notSaved, message, canSaveElsewhere: true } })
  }
  return false
}
