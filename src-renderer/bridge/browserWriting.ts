import type { SaveAnswer } from '#shared/bridge/bridge.ts'
import { fileNameFor, workbookEnding, workbookLimitBytes } from '#shared/bridge/fileName.ts'
import type { BrowserFile } from './browserReading.ts'
import { isChanged, writeHandle } from './handles.ts'
import { pickersOf, unlessCancelled, workbookTypes } from './pickers.ts'
import { rememberHandle } from './recentHandles.ts'
import { download } from './transfer.ts'
import { words } from './words.ts'

/** Which file is current in the browser, and how the workbook is written to it. */
export interface BrowserWriting {
  makeCurrent(file: BrowserFile | null): Promise<void>
  save(text: string, suggestedName: string): Promise<SaveAnswer>
  saveAs(text: string, suggestedName: string): Promise<SaveAnswer>
}

export function browserWriting(): BrowserWriting {
  const pickers = pickersOf(window)
  let current: BrowserFile | null = null

  async function makeCurrent(file: BrowserFile | null): Promise<void> {
    current = file
    if (file?.handle != null) await rememberHandle(file.handle)
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
    if (content.size > workbookLimitBytes) return tooLarge(handle.name)
    const answer = await writeHandle(handle, content)
    if (answer.kind !== 'saved') return answer
    const { lastModified } = await handle.getFile()
    await makeCurrent({ name: handle.name, handle, modifiedMs: lastModified })
    return answer
  }

  async function downloadAs(name: string, content: Blob): Promise<SaveAnswer> {
    if (content.size > workbookLimitBytes) return tooLarge(name)
    download(name, content)
    await makeCurrent({ name, handle: null, modifiedMs: Date.now() })
    return { kind: 'saved', name }
  }

  return { makeCurrent, save, saveAs }
}

function contentOf(text: string): Blob {
  return new Blob([text], { type: 'application/json' })
}

function tooLarge(name: string): SaveAnswer {
  return { kind: 'failed', message: words.tooLarge(name, workbookLimitBytes / 1024 / 1024) }
}
