import { mkdir, readFile, rm, stat, utimes, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, type Mock, vi } from 'vitest'
import type { SaveAnswer } from '#shared/bridge/bridge.ts'
import { recentListIn } from '../../../src-main/files/recentList.ts'
import type { FileDesk, FileQuestions } from '../../../src-main/main/fileDesk.ts'
import { fileDesk } from '../../../src-main/main/fileDesk.ts'
import { test as withFolder } from '../../folder.ts'

/** A desk whose current file is `path`, saved with the text `mine`. */
const test = withFolder.extend<{
  path: string
  overChanged: Mock<FileQuestions['overChanged']>
  desk: FileDesk
}>({
  path: async ({ folder }, use) => use(join(folder, 'bass.ferrule')),
  // biome-ignore lint/correctness/noEmptyPattern: the test runner reads the needed fixtures from the pattern
  overChanged: async ({}, use) => use(vi.fn(async () => 'cancel' as const)),
  desk: async ({ folder, path, overChanged }, use) => {
    const questions = {
      whichToOpen: async () => null,
      whereToSave: async () => path,
      replaceExisting: async () => false,
      overChanged,
    }
    const desk = fileDesk(questions, recentListIn(join(folder, 'data'), folder), folder)
    await desk.saveAs('mine', 'x')
    await use(desk)
  },
})

describe('Looking again at the current file', () => {
  test('finds nothing while only this program writes it', async ({ desk }) => {
    expect(await desk.lookAgain()).toBeNull()
    await desk.save('mine 2', 'x')
    expect(await desk.lookAgain()).toBeNull()
  })

  test('finds nothing where there is no file', async ({ desk, path }) => {
    await desk.release()
    await writeFile(path, 'theirs')
    expect(await desk.lookAgain()).toBeNull()
    expect(await desk.readAgain()).toMatchObject({ kind: 'failed' })
  })

  test('tells a change once, and a further change once more', async ({ desk, path }) => {
    await writeFile(path, 'theirs')
    await utimes(path, 1, 1)
    expect(await desk.lookAgain()).toBe('changed')
    expect(await desk.lookAgain()).toBeNull()
    await writeFile(path, 'theirs again')
    await utimes(path, 2, 2)
    expect(await desk.lookAgain()).toBe('changed')
  })

  test('tells that the file is gone, and saving writes it anew', async ({ desk, path }) => {
    await rm(path)
    expect(await desk.lookAgain()).toBe('gone')
    expect(await desk.lookAgain()).toBeNull()
    expect(await desk.save('mine 2', 'x')).toMatchObject({ kind: 'saved' })
    expect(await desk.lookAgain()).toBeNull()
  })

  test('tells that it is gone once more, when it was saved in between', async ({ desk, path }) => {
    for (const text of ['mine 2', 'mine 3']) {
      await rm(path)
      expect(await desk.lookAgain()).toBe('gone')
      await desk.save(text, 'x')
    }
  })

  test('a change that was told is still asked about before it is overwritten', async ({ desk, path }) => {
    await writeFile(path, 'theirs')
    expect(await desk.lookAgain()).toBe('changed')
    expect(await desk.save('mine 2', 'x')).toEqual({ kind: 'cancelled' })
  })

  test('the version there now is read under a ticket, and is current once adopted', async ({
    desk,
    path,
  }) => {
    await writeFile(path, 'theirs')
    const answer = await desk.readAgain()
    expect(answer).toMatchObject({ kind: 'opened', name: 'bass.ferrule', text: 'theirs' })
    await desk.adopt(answer.kind === 'opened' ? answer.ticket : '')
    expect(await desk.lookAgain()).toBeNull()
    expect(await desk.save('mine 2', 'x')).toMatchObject({ kind: 'saved' })
  })
})

describe('A file that was read', () => {
  test('is adopted once, and none that was read beside it afterwards', async ({ desk, path }) => {
    const read = [await desk.openPath(path), await desk.openPath(path)]
    const [ticket, beside] = read.map((answer) => (answer.kind === 'opened' ? answer.ticket : ''))
    await desk.adopt(ticket!)
    await expect(desk.adopt(ticket!)).rejects.toThrow('No file was read')
    await expect(desk.adopt(beside!)).rejects.toThrow('No file was read')
  })
})

describe('Saving', () => {
  test('waits for the one before: what that asked is not asked again', async ({
    desk,
    path,
    overChanged,
  }) => {
    await writeFile(path, 'theirs')
    let second: Promise<SaveAnswer> | null = null
    overChanged.mockImplementationOnce(async () => {
      second = desk.save('mine 3', 'x')
      return 'overwrite'
    })
    expect(await desk.save('mine 2', 'x')).toMatchObject({ kind: 'saved' })
    expect(await second).toMatchObject({ kind: 'saved' })
    expect(overChanged).toHaveBeenCalledOnce()
    expect(await readFile(path, 'utf8')).toBe('mine 3')
  })

  test('asks about a file that it cannot look at', async ({ folder, desk, path, overChanged }) => {
    // A folder in its place, of the size that the file had, is there and cannot be read.
    await mkdir(join(folder, 'other'))
    await desk.save('x'.repeat((await stat(join(folder, 'other'))).size), 'x')
    await rm(path)
    await mkdir(path)
    expect(await desk.save('mine 2', 'x')).toEqual({ kind: 'cancelled' })
    expect(overChanged).toHaveBeenCalledWith('bass.ferrule')
  })
})
