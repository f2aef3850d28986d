import type { FileChange, SaveAnswer } from '#shared/bridge/bridge.ts'
import { fileNameFor, workbookEnding } from '#shared/bridge/fileName.ts'
import { inTurn } from '#shared/bridge/inTurn.ts'
import { megabytesText, mostBytes } from '#shared/workbook/fileLimit.ts'
import { bridgeWords as words } from '../words/bridge.ts'
import type { BrowserFile } from './browserReading.ts'
import { isChanged, standingOf, writeHandle } from './handles.ts'
import { pickersOf, unlessCancelled, workbookTypes } from './pickers.ts'
import { rememberHandle } from './recentHandles.ts'
import { download } from './transfer.ts'

/** Which file is current in the browser, and how the workbook is written to it. */
export interface BrowserWriting {
  makeCurrent(file: BrowserFile | null): Promise<void>
  save(text: string, suggestedName: string): Promise<SaveAnswer>
  saveAs(text: string, suggestedName: string): Promise<SaveAnswer>
  /** What another program did to the current file; `null` when nothing, or when it was answered before. */
  lookAgain(): Promise<FileChange | null>
  currentHandle(): FileSystemFileHandle | null
  /** Names the current file among the recent ones; `null` when it is not there. */
  currentRecentId(): string | null
}

export function browserWriting(): BrowserWriting {
  const pickers = pickersOf(window)
  // One thing at a time: a file that is written slowly must not become the current one after another was opened.
  const queue = inTurn()
  let current: BrowserFile | null = null
  let recentId: string | null = null
  let told: unknown = null

  async function makeCurrent(file: BrowserFile | null): Promise<void> {
    current = file
    told = null
    recentId = file?.handle == null ? null : await rememberHandle(file.handle)
  }

  async function lookAgain(): Promise<FileChange | null> {
    const handle = current?.handle
    if (current === null || handle == null) return null
    const standing = await standingOf(handle, current.modifiedMs)
    if (standing === null) return null
    const isNews = standing !== 'same' && standing !== told
    told = standing
    if (!isNews) return null
    return standing === 'gone' ? 'gone' : 'changed'
  }

  async function save(text: string, suggestedName: string): Promise<SaveAnswer> {
    const handle = current?.handle
    if (current === null || handle == null) return saveAs(text, suggestedName)
    const mayWrite =
      !(await isChanged(handle, current.modifiedMs)) || window.confirm(words.changed(current.name))
    return mayWrite ? writeTo(handle, contentOf(text)) : { kind: 'cancelled' }
  }

  async function saveAs(text: string, suggestedName: string): Promise<SaveAnswer> {
    const name = current?.name ?? fileNameFor(suggestedName, workbookEnding)
    if (pickers === null) return downloadAs(name, contentOf(text))
    const asked = pickers.showSaveFilePicker({ suggestedName: name, types: workbookTypes })
    const handle = await unlessCancelled(asked)
    return handle === null ? { kind: 'cancelled' } : writeTo(handle, contentOf(text))
  }

  async function writeTo(handle: FileSystemFileHandle, content: Blob): Promise<SaveAnswer> {
    if (content.size > mostBytes) return tooLarge(handle.name)
    const answer = await writeHandle(handle, content)
    if (answer.kind !== 'saved') return answer
    const { lastModified } = await handle.getFile()
    await makeCurrent({ name: handle.name, handle, modifiedMs: lastModified })
    return answer
  }

  async function downloadAs(name: string, content: Blob): Promise<SaveAnswer> {
    if (content.size > mostBytes) return tooLarge(name)
    download(name, content)
    await makeCurrent({ name, handle: null, modifiedMs: Date.now() })
    return { kind: 'saved', name }
  }

  return {
    makeCurrent: (file) => queue(() => makeCurrent(file)),
    save: (text, name) => queue(() => save(text, name)),
    saveAs: (text, name) => queue(() => saveAs(text, name)),
    lookAgain: () => queue(lookAgain),
    currentHandle: () => current?.handle ?? null,
    currentRecentId: () => recentId,
  }
}

function contentOf(text: string): Blob {
  return new Blob([text], { type: 'application/json' })
}

function tooLarge(name: string): SaveAnswer {
  return { kind: 'failed', message: words.tooLarge(name, megabytesText(mostBytes)) }
}
