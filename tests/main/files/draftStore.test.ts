import { copyFile, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect } from 'vitest'
import { draftStoreIn } from '../../../src-main/files/draftStore.ts'
import { test } from '../../folder.ts'

const draft = (text: string, keptAt: number) => ({
  name: 'Bass in F',
  text,
  keptAt,
  fileName: 'bass.ferrule',
})
const path = join('/shop', 'bass.ferrule')

describe('Unsaved work', () => {
  test('of this run is not offered to this run', async ({ folder }) => {
    const drafts = draftStoreIn(folder)
    await drafts.keep(draft('mine', 1), path)
    expect(await drafts.left()).toEqual([])
  })

  test('of earlier runs is offered, newest first, whatever this run keeps and forgets', async ({
    folder,
  }) => {
    await draftStoreIn(folder).keep(draft('first', 1), path)
    await draftStoreIn(folder).keep(draft('second', 2), path)
    const drafts = draftStoreIn(folder)
    await drafts.keep(draft('mine', 3), path)
    await drafts.forget()
    expect((await drafts.left()).map(({ text }) => text)).toEqual(['second', 'first'])
  })

  test('is offered until it is forgotten, and others stay', async ({ folder }) => {
    await draftStoreIn(folder).keep(draft('first', 1), path)
    await draftStoreIn(folder).keep(draft('second', 2), path)
    const drafts = draftStoreIn(folder)
    const [second] = await drafts.left()
    await drafts.forgetLeft(second?.id ?? '')
    expect((await drafts.left()).map(({ text }) => text)).toEqual(['first'])
  })

  test('that a window left when it stopped working is offered to the next window of this run', async ({
    folder,
  }) => {
    const drafts = draftStoreIn(folder)
    await drafts.keep(draft('first', 1), path)
    await drafts.leaveBehind()
    await drafts.keep(draft('second', 2), path)
    await drafts.forget()
    expect((await drafts.left()).map(({ text }) => text)).toEqual(['first'])
  })

  test('is joined to its file only when the file has its name', async ({ folder }) => {
    const earlier = draftStoreIn(folder)
    await earlier.keep(draft('first', 1), path)
    const drafts = draftStoreIn(folder)
    const [joined] = await drafts.left()
    expect(joined).toMatchObject({ fileName: 'bass.ferrule' })
    expect(await drafts.pathOf(joined?.id ?? '')).toBe(path)

    await earlier.keep(draft('first', 1), join('/shop', 'other.ferrule'))
    const [alone] = await drafts.left()
    expect(alone).toMatchObject({ text: 'first', fileName: null })
    expect(await drafts.pathOf(alone?.id ?? '')).toBeNull()
  })

  test('that its file holds already is forgotten, not offered', async ({ folder }) => {
    const file = join(folder, 'bass.ferrule')
    await draftStoreIn(folder).keep(draft('saved', 1), file)
    await draftStoreIn(folder).keep(draft('newer', 2), file)
    await writeFile(file, 'saved')
    expect((await draftStoreIn(folder).left()).map(({ text }) => text)).toEqual(['newer'])
    await rm(file)
    expect(await draftStoreIn(folder).left()).toHaveLength(1)
  })

  test('that is damaged, and files that are none, are left alone and not offered', async ({ folder }) => {
    await draftStoreIn(folder).keep(draft('first', 1), path)
    const [name = ''] = await readdir(join(folder, 'drafts'))
    await writeFile(join(folder, 'drafts', name), '{"name":"x","text":')
    await writeFile(join(folder, 'drafts', 'notes.json'), '{}')
    const drafts = draftStoreIn(folder)
    expect(await drafts.left()).toEqual([])
    expect((await readdir(join(folder, 'drafts'))).sort()).toEqual([name, 'notes.json'].sort())
  })

  test('is named by its id alone: a path in place of one reaches nothing', async ({ folder }) => {
    await writeFile(join(folder, 'recent.json'), '[]')
    const drafts = draftStoreIn(folder)
    await drafts.forgetLeft('../recent')
    expect(await readFile(join(folder, 'recent.json'), 'utf8')).toBe('[]')
    await drafts.keep(draft('mine', 1), path)
    const [name = ''] = await readdir(join(folder, 'drafts'))
    await copyFile(join(folder, 'drafts', name), join(folder, 'outside.json'))
    expect(await drafts.pathOf(name.replace('.json', ''))).toBe(path)
    expect(await drafts.pathOf('../outside')).toBeNull()
  })

  test('of this run is not forgotten as if it were left', async ({ folder }) => {
    const drafts = draftStoreIn(folder)
    await drafts.keep(draft('mine', 1), path)
    const [name = ''] = await readdir(join(folder, 'drafts'))
    await drafts.forgetLeft(name.replace('.json', ''))
    expect((await draftStoreIn(folder).left()).map(({ text }) => text)).toEqual(['mine'])
  })

  test('is looked for without what a crash in the middle of keeping it left', async ({ folder }) => {
    const drafts = draftStoreIn(folder)
    await drafts.keep(draft('mine', 1), path)
    const half = join(folder, 'drafts', '.ferrule-0123456789ab.part')
    await writeFile(half, 'half')
    await utimes(half, 1, 1)
    await drafts.left()
    expect(await readdir(join(folder, 'drafts'))).toEqual([expect.stringMatching(/\.json$/)])
  })

  test('that cannot be kept is not passed over in silence', async ({ folder }) => {
    await writeFile(join(folder, 'drafts'), 'a file where the folder should be')
    await expect(draftStoreIn(folder).keep(draft('mine', 1), path)).rejects.toThrow('could not be kept')
  })
})
