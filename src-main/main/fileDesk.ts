import { randomUUID } from 'node:crypto'
import { basename, dirname, join } from 'node:path'
import type { FileChange, OpenAnswer, SaveAnswer } from '#shared/bridge/bridge.ts'
import { fileNameFor, workbookEnding } from '#shared/bridge/fileName.ts'
import { inTurn } from '#shared/bridge/inTurn.ts'
import { mostBytes } from '#shared/workbook/fileLimit.ts'
import type { Fingerprint } from '../files/fingerprint.ts'
import { standingOf } from '../files/fingerprint.ts'
import { sweepLeftovers } from '../files/leftovers.ts'
import { readText, tooLarge } from '../files/readText.ts'
import type { RecentList } from '../files/recentList.ts'
import { writeSafely } from '../files/writeSafely.ts'
import { askSavePath } from './savePath.ts'

/** What the desk asks the person; `null` is a dialog that was cancelled. */
export interface FileQuestions {
  whichToOpen(folder: string): Promise<string | null>
  whereToSave(suggestedPath: string): Promise<string | null>
  replaceExisting(name: string): Promise<boolean>
  /** The file was changed by someone else since it was read or written here. */
  overChanged(name: string): Promise<'overwrite' | 'saveAs' | 'cancel'>
}

/** The workbook's file: which one is current, and every way it is read and written. */
export interface FileDesk {
  openByQuestion(): Promise<OpenAnswer>
  openPath(path: string): Promise<OpenAnswer>
  openRecent(id: string): Promise<OpenAnswer>
  /** Throws when nothing was read under `ticket`. */
  adopt(ticket: string): Promise<void>
  release(): Promise<void>
  /** Reads the current file as it stands now; nothing of what is current changes. */
  readAgain(): Promise<OpenAnswer>
  /** What another program did to the current file; `null` when nothing, or when it was answered before. */
  lookAgain(): Promise<FileChange | null>
  save(text: string, suggestedName: string): Promise<SaveAnswer>
  saveAs(text: string, suggestedName: string): Promise<SaveAnswer>
  currentPath(): string | null
  /** The folder that the next dialog starts in. */
  folder(): string
}

interface CurrentFile {
  readonly path: string
  readonly fingerprint: Fingerprint
}

export function fileDesk(questions: FileQuestions, recent: RecentList, firstFolder: string): FileDesk {
  const readFiles = new Map<string, CurrentFile>()
  const queue = inTurn()
  let current: CurrentFile | null = null
  let told = ''
  let folder = firstFolder

  async function openPath(path: string): Promise<OpenAnswer> {
    const answer = await readText(path)
    if (answer.kind === 'failed') return answer
    const ticket = randomUUID()
    readFiles.set(ticket, { path, fingerprint: answer.fingerprint })
    return { kind: 'opened', ticket, name: basename(path), text: answer.text }
  }

  async function openByQuestion(): Promise<OpenAnswer> {
    const path = await questions.whichToOpen(folder)
    return path === null ? { kind: 'cancelled' } : openPath(path)
  }

  async function openRecent(id: string): Promise<OpenAnswer> {
    const path = await recent.pathOf(id)
    if (path !== null) return openPath(path)
    return { kind: 'failed', message: 'This file is no longer in the list of recent files.' }
  }

  async function adopt(ticket: string): Promise<void> {
    const file = readFiles.get(ticket)
    if (file === undefined) throw new Error('No file was read under this ticket.')
    readFiles.clear()
    await makeCurrent(file)
    await sweepLeftovers(folder, Date.now())
  }

  async function makeCurrent(file: CurrentFile): Promise<void> {
    current = file
    told = ''
    folder = dirname(file.path)
    await recent.add(file.path)
  }

  async function readAgain(): Promise<OpenAnswer> {
    return current === null
      ? { kind: 'failed', message: 'There is no file to read.' }
      : openPath(current.path)
  }

  async function lookAgain(): Promise<FileChange | null> {
    if (current === null) return null
    const standing = await standingOf(current.path, current.fingerprint).catch(() => null)
    // A file that cannot be looked at now is looked at again when it is written.
    if (standing === null) return null
    const found = JSON.stringify(standing)
    const isNews = standing.kind !== 'same' && found !== told
    told = found
    return isNews ? standing.kind : null
  }

  async function save(text: string, suggestedName: string): Promise<SaveAnswer> {
    if (current === null) return saveAs(text, suggestedName)
    if (await stands(current)) return write(current.path, text)
    const choice = await questions.overChanged(basename(current.path))
    if (choice === 'overwrite') return write(current.path, text)
    return choice === 'saveAs' ? saveAs(text, suggestedName) : { kind: 'cancelled' }
  }

  async function saveAs(text: string, suggestedName: string): Promise<SaveAnswer> {
    const name = current === null ? fileNameFor(suggestedName, workbookEnding) : basename(current.path)
    const asked = { where: questions.whereToSave, replaceExisting: questions.replaceExisting }
    const path = await askSavePath(asked, join(folder, name), [workbookEnding, '.json'])
    return path === null ? { kind: 'cancelled' } : write(path, text)
  }

  async function write(path: string, text: string): Promise<SaveAnswer> {
    const content = Buffer.from(text, 'utf8')
    if (content.byteLength > mostBytes) return { kind: 'failed', message: tooLarge(path) }
    const answer = await writeSafely(path, content, { keepPrevious: true })
    if (answer.kind === 'failed') return answer
    await makeCurrent({ path, fingerprint: answer.fingerprint })
    return { kind: 'saved', name: basename(path) }
  }

  return {
    openByQuestion,
    openPath,
    openRecent,
    adopt: (ticket) => queue(() => adopt(ticket)),
    release: () =>
      queue(async () => {
        current = null
      }),
    readAgain,
    lookAgain: () => queue(lookAgain),
    save: (text, name) => queue(() => save(text, name)),
    saveAs: (text, name) => queue(() => saveAs(text, name)),
    currentPath: () => current?.path ?? null,
    folder: () => folder,
  }
}

/**
 * Whether the file can be written over without a question. One that is gone can: writing it anew loses nothing.
 * One that cannot be looked at is not known to stand as it was.
 */
async function stands(file: CurrentFile): Promise<boolean> {
  return standingOf(file.path, file.fingerprint).then(
    ({ kind }) => kind !== 'changed',
    () => false,
  )
}
