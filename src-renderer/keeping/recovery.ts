import { create } from 'zustand'
import type { LeftDraft } from '#shared/bridge/bridge.ts'
import { openWorkbook } from '#shared/workbook/openWorkbook.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { bridge } from '../bridge/bridge.ts'
import { showOpened, showRestored, useFile, whenKept } from '../state/fileActions.ts'
import { compareWords, keepingWords } from '../words/keeping.ts'
import { compared, useComparison } from './comparison.ts'

/** Work that crashes left behind, and whether new work can be kept. */
export interface Recovery {
  readonly left: readonly LeftDraft[]
  /** The person will look at it later. */
  readonly isPutOff: boolean
  readonly cannotKeep: boolean
}

export const useRecovery = create<Recovery>()(() => ({ left: [], isPutOff: false, cannotKeep: false }))

/** Asks the form what was left behind. */
export async function loadLeft(): Promise<void> {
  useRecovery.setState({ left: await bridge.leftDrafts() })
}

/** Forgets left work for good. */
export async function forgetLeft(draft: LeftDraft): Promise<void> {
  await bridge.forgetDraft(draft.id)
  await loadLeft()
}

/** When work was kept, as a person writes it. */
export function keptWhen(draft: LeftDraft): string {
  return new Date(draft.keptAt).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' })
}

/** The file that left work belongs to, as it stands now. */
interface FileNow {
  readonly ticket: string
  readonly name: string
  readonly workbook: Workbook
}

type FileAnswer = { readonly file: FileNow } | { readonly trouble: string }

async function readFileOf(draft: LeftDraft): Promise<FileAnswer> {
  const answer = await bridge.openDraftFile(draft.id)
  if (answer.kind !== 'opened') return { trouble: answer.kind === 'failed' ? answer.message : '' }
  const opened = openWorkbook(answer.text)
  if (!opened.ok) return { trouble: opened.failure.message }
  return { file: { ticket: answer.ticket, name: answer.name, workbook: opened.workbook } }
}

/** The workbook in left work; `null`, and the reason said, when it cannot be read. */
function workbookIn(draft: LeftDraft): Workbook | null {
  const opened = openWorkbook(draft.text)
  if (opened.ok) return opened.workbook
  useFile.setState({ trouble: { title: keepingWords.notReadable, message: opened.failure.message } })
  return null
}

/** Opens left work again, joined to its file where that can be read. */
export async function restoreLeft(draft: LeftDraft): Promise<void> {
  const workbook = workbookIn(draft)
  if (workbook === null) return
  const answer = draft.fileName === null ? { trouble: '' } : await readFileOf(draft)
  whenKept(() => void takeUp(draft, workbook, 'file' in answer ? answer.file : null))
}

/** It is kept as this window's own before it is forgotten as left work: at no moment is it nowhere. */
async function takeUp(draft: LeftDraft, workbook: Workbook, file: FileNow | null): Promise<void> {
  if (file === null) await bridge.releaseFile()
  else await bridge.adoptFile(file.ticket)
  showRestored(workbook, file)
  const { id, ...own } = draft
  const isKept = await bridge.keepDraft(own).then(
    () => true,
    () => false,
  )
  if (isKept) await bridge.forgetDraft(id)
  await loadLeft()
}

/** Sets left work beside its file, so that the person can choose. */
export async function compareLeft(draft: LeftDraft): Promise<void> {
  const workbook = workbookIn(draft)
  if (workbook === null) return
  const answer = await readFileOf(draft)
  const file = 'file' in answer ? answer.file : null
  const name = draft.name === '' ? keepingWords.aWorkbook : draft.name
  useComparison.setState({
    shown: {
      title: compareWords.leftTitle(name, draft.fileName ?? ''),
      lead: compareWords.leftLead(keptWhen(draft)),
      mine: compareWords.kept,
      differences: file === null ? null : await compared(file.workbook, workbook),
      trouble: 'trouble' in answer ? answer.trouble : null,
      choices: [
        {
          label: compareWords.restoreKept,
          act: () => whenKept(() => void takeUp(draft, workbook, file)),
        },
        ...(file === null ? [] : [{ label: compareWords.openFile, act: () => openFile(file) }]),
        { label: compareWords.forgetKept, act: () => void forgetLeft(draft) },
      ],
    },
  })
}

function openFile(file: FileNow): void {
  whenKept(() => void bridge.adoptFile(file.ticket).then(() => showOpened(file.workbook, file.name)))
}
