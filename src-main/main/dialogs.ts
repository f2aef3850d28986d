import { extname } from 'node:path'
import type { BrowserWindow, FileFilter, MessageBoxOptions } from 'electron'
import { dialog } from 'electron'
import { workbookEnding } from '#shared/bridge/fileName.ts'
import type { ExportQuestions } from './exporting.ts'
import type { FileQuestions } from './fileDesk.ts'
import { words } from './words.ts'

/** The questions that belong to the window, as native dialogs attached to it. */
export interface Dialogs extends FileQuestions, ExportQuestions {
  keepChanges(name: string): Promise<'save' | 'discard' | 'cancel'>
  openAgain(): Promise<boolean>
}

const workbooks: FileFilter = { name: words.workbookFiles, extensions: [workbookEnding.slice(1)] }
const anything: FileFilter = { name: words.allFiles, extensions: ['*'] }

export function dialogsOf(window: BrowserWindow): Dialogs {
  async function whichToOpen(folder: string): Promise<string | null> {
    const answer = await dialog.showOpenDialog(window, {
      defaultPath: folder,
      filters: [workbooks, anything],
      properties: ['openFile'],
    })
    return answer.canceled ? null : (answer.filePaths[0] ?? null)
  }

  async function where(defaultPath: string, filters: FileFilter[]): Promise<string | null> {
    const properties = ['createDirectory' as const, 'showOverwriteConfirmation' as const]
    const answer = await dialog.showSaveDialog(window, { defaultPath, filters, properties })
    return answer.canceled || answer.filePath === '' ? null : answer.filePath
  }

  return {
    whichToOpen,
    whereToSave: (suggested) => where(suggested, [workbooks, anything]),
    whereToExport: (suggested) => where(suggested, [filterOf(suggested), anything]),
    replaceExisting: (name) => ask(window, replaceQuestion(name), ['replace', 'cancel']).then(isReplace),
    overChanged: (name) => ask(window, changedQuestion(name), ['overwrite', 'saveAs', 'cancel']),
    keepChanges: (name) => ask(window, keepQuestion(name), ['save', 'discard', 'cancel']),
    openAgain: () => ask(window, goneQuestion, ['again', 'quit']).then((choice) => choice === 'again'),
  }
}

const isReplace = (choice: string): boolean => choice === 'replace'

function filterOf(path: string): FileFilter {
  const ending = extname(path).slice(1)
  return { name: ending.toUpperCase(), extensions: [ending] }
}

/** The last choice is the one that changes nothing, and what Escape means; the first is what Enter means. */
async function ask<Choice extends string>(
  window: BrowserWindow,
  question: Pick<MessageBoxOptions, 'message' | 'detail' | 'buttons'>,
  choices: readonly Choice[],
): Promise<Choice> {
  const last = choices.length - 1
  const look = { type: 'question' as const, defaultId: 0, cancelId: last, noLink: true }
  const { response } = await dialog.showMessageBox(window, { ...look, ...question })
  return (choices[response] ?? choices[last])!
}

const keepQuestion = (name: string) => ({
  message: words.keepQuestion(name),
  detail: words.keepDetail,
  buttons: [words.save, words.dontSave, words.cancel],
})

const changedQuestion = (name: string) => ({
  message: words.changedQuestion(name),
  detail: words.changedDetail,
  buttons: [words.overwrite, words.saveAs, words.cancel],
})

const replaceQuestion = (name: string) => ({
  message: words.replaceQuestion(name),
  detail: words.replaceDetail,
  buttons: [words.replace, words.cancel],
})

const goneQuestion = {
  message: words.goneQuestion,
  detail: words.goneDetail,
  buttons: [words.reload, words.quit],
}
