import { writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, vi } from 'vitest'
import { askSavePath } from '../../../src-main/main/savePath.ts'
import { test } from '../../folder.ts'

const endings = ['.ferrule', '.json'] as const

/** Where it is saved when `chosen` is the answer, and the names that were asked about. */
async function saved(chosen: string | null, mayReplace = true) {
  const replaceExisting = vi.fn(async () => mayReplace)
  const path = await askSavePath({ where: async () => chosen, replaceExisting }, 'bass', endings)
  return { path, asked: replaceExisting.mock.calls.flat() }
}

describe('The path to save at', () => {
  test.each([
    ['bass', 'bass.ferrule'],
    ['bass.in F', 'bass.in F.ferrule'],
    ['bass.ferrule', 'bass.ferrule'],
    ['bass.json', 'bass.json'],
    ['BASS.FERRULE', 'BASS.FERRULE'],
    ['Bass.Json', 'Bass.Json'],
  ])('carries an ending: %s', async (typed, name) => {
    expect(await saved(join('nowhere', typed))).toEqual({ path: join('nowhere', name), asked: [] })
  })

  test('is none when the dialog was cancelled', async () => {
    expect(await saved(null)).toEqual({ path: null, asked: [] })
  })

  test('is asked about when completing the name met a file', async ({ folder }) => {
    const path = join(folder, 'bass.ferrule')
    await writeFile(path, 'theirs')
    expect(await saved(join(folder, 'bass'))).toEqual({ path, asked: ['bass.ferrule'] })
    expect(await saved(join(folder, 'bass'), false)).toEqual({ path: null, asked: ['bass.ferrule'] })
  })

  test('is not asked about again when the dialog did', async ({ folder }) => {
    const path = join(folder, 'bass.ferrule')
    await writeFile(path, 'theirs')
    expect(await saved(path, false)).toEqual({ path, asked: [] })
  })
})
