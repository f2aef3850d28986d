import { rm, utimes, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect } from 'vitest'
import { recentListIn } from '../../../src-main/files/recentList.ts'
import type { FileDesk } from '../../../src-main/main/fileDesk.ts'
import { fileDesk } from '../../../src-main/main/fileDesk.ts'
import { test as withFolder } from '../../folder.ts'

/** A desk whose current file is `path`, saved with the text `mine`. */
const test = withFolder.extend<{ path: string; desk: FileDesk }>({
  path: async ({ folder }, use) => use(join(folder, 'bass.ferrule')),
  desk: async ({ folder, path }, use) => {
    const questions = {
      whichToOpen: async () => null,
      whereToSave: async () => path,
      replaceExisting: async () => false,
      overChanged: async () => 'cancel' as const,
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
