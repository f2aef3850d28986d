import type { OpenAnswer, RecentWorkbook } from '#shared/bridge/bridge.ts'
import { bridgeWords as words } from '../words/bridge.ts'
import { isGone } from './handles.ts'
import { isPermitted, pickersOf, unlessCancelled, workbookTypes } from './pickers.ts'
import { readFile } from './readFile.ts'
import { forgetHandle, recentHandles } from './recentHandles.ts'
import { chooseUpload } from './transfer.ts'

/** A file as the browser knows it: with a handle it can be written again, without one only downloaded anew. */
export interface BrowserFile {
  readonly name: string
  readonly handle: FileSystemFileHandle | null
  readonly modifiedMs: number
}

/** Opening workbooks in the browser. What was read waits under its ticket until it is taken. */
export interface BrowserReading {
  open(): Promise<OpenAnswer>
  openRecent(id: string): Promise<OpenAnswer>
  /** Reads the file behind a handle once more. */
  openHandle(handle: FileSystemFileHandle): Promise<OpenAnswer>
  recent(): Promise<readonly RecentWorkbook[]>
  /** Throws when nothing was read under `ticket`. */
  take(ticket: string): BrowserFile
}

export function browserReading(): BrowserReading {
  const waiting = new Map<string, BrowserFile>()
  const pickers = pickersOf(window)

  async function read(file: File, handle: FileSystemFileHandle | null): Promise<OpenAnswer> {
    const answer = await readFile(file)
    if (answer.kind === 'failed') return answer
    const ticket = crypto.randomUUID()
    waiting.set(ticket, { name: file.name, handle, modifiedMs: file.lastModified })
    return { kind: 'opened', ticket, name: file.name, text: answer.text }
  }

  async function open(): Promise<OpenAnswer> {
    if (pickers === null) {
      const file = await chooseUpload()
      return file === null ? { kind: 'cancelled' } : read(file, null)
    }
    const chosen = await unlessCancelled(pickers.showOpenFilePicker({ types: workbookTypes }))
    const handle = chosen?.[0]
    return handle === undefined ? { kind: 'cancelled' } : openHandle(handle)
  }

  async function openHandle(
    handle: FileSystemFileHandle,
    whenGone?: () => Promise<void>,
  ): Promise<OpenAnswer> {
    try {
      if (!(await isPermitted(handle, 'read'))) return failed(words.notAllowed(handle.name))
      return await read(await handle.getFile(), handle)
    } catch (error) {
      if (isGone(error)) await whenGone?.()
      return failed(words.notReadable(handle.name))
    }
  }

  async function openRecent(id: string): Promise<OpenAnswer> {
    const known = (await recentHandles()).find((file) => file.id === id)
    return known === undefined ? failed(words.notRecent) : openHandle(known.handle, () => forgetHandle(id))
  }

  async function recent(): Promise<readonly RecentWorkbook[]> {
    return (await recentHandles()).map(({ id, name }) => ({ id, name, place: '' }))
  }

  function take(ticket: string): BrowserFile {
    const file = waiting.get(ticket)
    if (file === undefined) throw new Error('No file was read under this ticket.')
    waiting.clear()
    return file
  }

  return { open, openRecent, openHandle: (handle) => openHandle(handle), recent, take }
}

function failed(message: string): OpenAnswer {
  return { kind: 'failed', message }
}
