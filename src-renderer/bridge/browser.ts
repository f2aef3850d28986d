import type { Bridge, ExportedFile, OpenAnswer, SaveAnswer, WindowState } from '#shared/bridge/bridge.ts'
import { fileNameFor } from '#shared/bridge/fileName.ts'
import { bridgeWords as words } from '../words/bridge.ts'
import { browserReading } from './browserReading.ts'
import { browserWriting } from './browserWriting.ts'
import { fileChanges } from './fileChanges.ts'
import { keptDraft } from './keptDraft.ts'
import { keyCommands } from './keyCommands.ts'
import { printPage } from './paper.ts'
import { forgetHandles } from './recentHandles.ts'
import { download } from './transfer.ts'
import { unsavedGuard } from './unsavedGuard.ts'

/** The bridge of the browser form, by what the browser itself can do. */
export function browserBridge(): Bridge {
  const reading = browserReading()
  const writing = browserWriting()
  const draft = keptDraft()
  const guard = unsavedGuard()

  return {
    form: 'browser',
    openWorkbook: reading.open,
    recentWorkbooks: reading.recent,
    openRecent: reading.openRecent,
    clearRecent: forgetHandles,
    adoptFile: async (ticket) => writing.makeCurrent(reading.take(ticket)),
    releaseFile: () => writing.makeCurrent(null),
    saveWorkbook: writing.save,
    saveWorkbookAs: writing.saveAs,
    exportFile,
    showState: async (state) => {
      document.title = titleOf(state)
      guard.watch(state.dirty)
    },
    print: printPage,
    closeWindow: async () => {
      guard.watch(false)
      draft.forget()
      window.close()
    },
    keepDraft: async (kept) => (kept === null ? draft.forget() : draft.keep(kept, writing.currentRecentId())),
    leftDrafts: draft.left,
    openDraftFile: async (id) => {
      const recentId = draft.recentIdOf(id)
      return recentId === null ? failed(words.noDraftFile) : reading.openRecent(recentId)
    },
    forgetDraft: async (id) => draft.forgetLeft(id),
    readCurrentFile: async () => {
      const handle = writing.currentHandle()
      return handle === null ? failed(words.noDraftFile) : reading.openHandle(handle)
    },
    onFileChanged: fileChanges(writing.lookAgain),
    onCommand: keyCommands(),
    // The browser's own question goes by the state in the page itself, which is shown with each event.
    onClosing: () => () => undefined,
    // Nothing outside can hand a page a file.
    onFile: () => () => undefined,
  }
}

function failed(message: string): OpenAnswer {
  return { kind: 'failed', message }
}

async function exportFile({ name, mediaType, content }: ExportedFile): Promise<SaveAnswer> {
  const dot = name.lastIndexOf('.')
  const offered = fileNameFor(name, dot > 0 ? name.slice(dot) : '')
  const part = typeof content === 'string' ? content : new Uint8Array(content)
  download(offered, new Blob([part], { type: mediaType }))
  return { kind: 'saved', name: offered }
}

function titleOf({ hasWorkbook, dirty, name }: WindowState): string {
  return hasWorkbook ? `${dirty ? '• ' : ''}${name} – ${words.program}` : words.program
}
