import { workbookEnding } from '#shared/bridge/fileName.ts'
import { bridgeWords as words } from '../words/bridge.ts'

/** The parts of the File System Access API that the standard library of types does not know. */
interface Pickers {
  showOpenFilePicker(options: PickerOptions): Promise<readonly FileSystemFileHandle[]>
  showSaveFilePicker(options: PickerOptions & { suggestedName: string }): Promise<FileSystemFileHandle>
}

interface PickerOptions {
  readonly types: readonly {
    readonly description: string
    readonly accept: Record<string, readonly string[]>
  }[]
  readonly excludeAcceptAllOption?: boolean
}

interface Permitting {
  queryPermission?(wanted: { mode: 'read' | 'readwrite' }): Promise<PermissionState>
  requestPermission?(wanted: { mode: 'read' | 'readwrite' }): Promise<PermissionState>
}

/** What the file dialogs offer. */
export const workbookTypes = [
  { description: words.workbookFiles, accept: { 'application/json': [workbookEnding] } },
]

/** The browser's own file dialogs, `null` where it has none. */
export function pickersOf(window: Window): Pickers | null {
  return 'showOpenFilePicker' in window && 'showSaveFilePicker' in window
    ? (window as unknown as Pickers)
    : null
}

/** `null` when the person cancelled the dialog; any other trouble is thrown on. */
export async function unlessCancelled<Answer>(asked: Promise<Answer>): Promise<Answer | null> {
  try {
    return await asked
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return null
    throw error
  }
}

/** Whether the browser allows reading without asking the person. */
export async function isReadable(handle: FileSystemFileHandle & Permitting): Promise<boolean> {
  if (handle.queryPermission === undefined) return true
  return (await handle.queryPermission({ mode: 'read' })) === 'granted'
}

/** Asks the person where the browser has not been allowed yet; must follow a key or a click. */
export async function isPermitted(
  handle: FileSystemFileHandle & Permitting,
  mode: 'read' | 'readwrite',
): Promise<boolean> {
  if (handle.queryPermission === undefined || handle.requestPermission === undefined) return true
  if ((await handle.queryPermission({ mode })) === 'granted') return true
  return (await handle.requestPermission({ mode })) === 'granted'
}
