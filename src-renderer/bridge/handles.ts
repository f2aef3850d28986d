import type { SaveAnswer } from '#shared/bridge/bridge.ts'
import { bridgeWords as words } from '../words/bridge.ts'
import { isPermitted, isReadable } from './pickers.ts'

/** Writes through a handle. The browser puts the new content in place only when all of it is written. */
export async function writeHandle(handle: FileSystemFileHandle, content: Blob): Promise<SaveAnswer> {
  try {
    if (!(await isPermitted(handle, 'readwrite')))
      return { kind: 'failed', message: words.notAllowed(handle.name) }
    await write(await handle.createWritable(), content)
    return { kind: 'saved', name: handle.name }
  } catch (error) {
    return { kind: 'failed', message: writingTrouble(error, handle.name) }
  }
}

async function write(file: FileSystemWritableFileStream, content: Blob): Promise<void> {
  try {
    await file.write(content)
    await file.close()
  } catch (error) {
    await file.abort().catch(() => undefined)
    throw error
  }
}

/** One sentence for the person on why a file could not be written, as far as the browser tells. */
function writingTrouble(error: unknown, name: string): string {
  switch (error instanceof DOMException ? error.name : '') {
    case 'QuotaExceededError':
      return words.diskFull(name)
    case 'NotFoundError':
      return words.folderGone(name)
    case 'NoModificationAllowedError':
      return words.readOnly(name)
    case 'NotAllowedError':
    case 'SecurityError':
      return words.notAllowed(name)
    default:
      return words.notWritten(name)
  }
}

/** Whether someone else wrote the file since `modifiedMs`. One that is gone is written anew, and loses nothing. */
export async function isChanged(handle: FileSystemFileHandle, modifiedMs: number): Promise<boolean> {
  return handle.getFile().then(
    (file) => file.lastModified !== modifiedMs,
    () => false,
  )
}

/** How a file stands against when it was last written here; `null` where it cannot be looked at unasked. */
export async function standingOf(
  handle: FileSystemFileHandle,
  modifiedMs: number,
): Promise<'same' | 'gone' | number | null> {
  try {
    if (!(await isReadable(handle))) return null
    const { lastModified } = await handle.getFile()
    return lastModified === modifiedMs ? 'same' : lastModified
  } catch (error) {
    return isGone(error) ? 'gone' : null
  }
}

export function isGone(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'NotFoundError'
}
