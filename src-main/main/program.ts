import { app, ipcMain } from 'electron'
import type { MenuCommand, OpenAnswer } from '#shared/bridge/bridge.ts'
import { noticeChannel } from '../channels/channels.ts'
import { draftStoreIn } from '../files/draftStore.ts'
import { recentListIn } from '../files/recentList.ts'
import { isOwnPage, ownPage } from './addresses.ts'
import type { Answers } from './answering.ts'
import { answerQuestions } from './answering.ts'
import { guardClosing } from './closing.ts'
import { dialogsOf } from './dialogs.ts'
import { exporter } from './exporting.ts'
import { fileDesk } from './fileDesk.ts'
import { createWindow, keepPlace, showTitle } from './mainWindow.ts'
import { menuBar } from './menuBar.ts'
import { printer } from './printing.ts'
import { emptyState, standingOf } from './standing.ts'
import { placeStoreIn } from './windowPlace.ts'
import { words } from './words.ts'

export interface Program {
  /** A file came by itself; the window is told once it can listen. */
  arrive(path: string): Promise<void>
  bringForward(): void
}

/** Puts the window and everything behind it together, and loads the page. */
export async function startProgram(): Promise<Program> {
  const dataFolder = app.getPath('userData')
  const recent = recentListIn(dataFolder, app.getPath('home'))
  const drafts = draftStoreIn(dataFolder)
  const places = placeStoreIn(dataFolder)
  const window = await createWindow(places)
  const contents = window.webContents
  const dialogs = dialogsOf(window)
  const desk = fileDesk(dialogs, recent, app.getPath('documents'))
  const exportFile = exporter(dialogs, desk.folder)
  const loaded = new Promise<void>((resolve) => contents.once('did-finish-load', () => resolve()))
  const standing = standingOf(() => contents.send(noticeChannel('closing')))

  const command = (name: MenuCommand): void => contents.send(noticeChannel('command'), name)
  const deliver = async (answer: OpenAnswer): Promise<void> => {
    await loaded
    if (!window.isDestroyed()) contents.send(noticeChannel('file'), answer)
  }

  const menu = menuBar(recent, {
    command,
    openRecent: (id) => void desk.openRecent(id).then(deliver).then(menu.refreshRecent),
    clearRecent: () => void recent.clear().then(menu.refreshRecent),
  })

  const closeNow = guardClosing(window, {
    isDirty: standing.isDirty,
    keepChanges: () => dialogs.keepChanges(standing.last.name),
    saveThenClose: () => command('saveThenClose'),
    tidy: async () => {
      await Promise.allSettled([drafts.forget(), keepPlace(window, places)])
    },
  })

  /** After a file became current or was written, the title and the recent files may differ. */
  async function refreshed<Answer>(answer: Promise<Answer>): Promise<Answer> {
    const given = await answer
    await menu.refreshRecent()
    if (!window.isDestroyed()) showTitle(window, standing.last, desk.currentPath())
    return given
  }

  const answers: Answers = {
    openWorkbook: () => desk.openByQuestion(),
    recentWorkbooks: () => recent.list(),
    openRecent: (id) => refreshed(desk.openRecent(id)),
    clearRecent: () => refreshed(recent.clear()),
    adoptFile: (ticket) => refreshed(desk.adopt(ticket)),
    releaseFile: () => refreshed(desk.release()),
    saveWorkbook: (text, name) => refreshed(desk.save(text, name)),
    saveWorkbookAs: (text, name) => refreshed(desk.saveAs(text, name)),
    exportFile,
    showState: async (state) => {
      standing.said(state)
      showTitle(window, state, desk.currentPath())
      menu.showState(state)
    },
    print: printer(contents, exportFile),
    closeWindow: closeNow,
    keepDraft: (draft) => (draft === null ? drafts.forget() : drafts.keep(draft, desk.currentPath())),
    leftDrafts: () => drafts.left(),
    openDraftFile: async (id) => {
      const path = await drafts.pathOf(id)
      return path === null ? { kind: 'failed', message: words.noDraftFile } : desk.openPath(path)
    },
    forgetDraft: (id) => drafts.forgetLeft(id),
    readCurrentFile: () => desk.readAgain(),
  }
  answerQuestions(ipcMain, { contents, isOwnPage }, answers)

  /** Coming back to the window is when a person may have changed the file elsewhere. */
  window.on('focus', async () => {
    const change = await desk.lookAgain()
    if (change !== null && !window.isDestroyed()) contents.send(noticeChannel('fileChanged'), change)
  })

  /** The draft is left behind, so that it is offered again. */
  contents.on('render-process-gone', async (_event, details) => {
    if (details.reason === 'clean-exit') return
    standing.said(emptyState)
    await Promise.all([drafts.leaveBehind(), desk.release()])
    if (await dialogs.openAgain()) contents.reload()
    else window.destroy()
  })

  await menu.refreshRecent()
  // Rejects when the window is closed before its page is there; nothing is lost then.
  window.loadURL(ownPage).catch(() => undefined)
  return {
    arrive: async (path) => deliver(await desk.openPath(path)),
    bringForward: () => {
      if (window.isDestroyed()) return
      if (window.isMinimized()) window.restore()
      window.focus()
    },
  }
}
