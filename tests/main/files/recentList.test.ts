import { rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect } from 'vitest'
import { recentListIn, shortened, withNewest } from '../../../src-main/files/recentList.ts'
import { test } from '../../folder.ts'

async function made(folder: string, name: string): Promise<string> {
  const path = join(folder, name)
  await writeFile(path, '')
  return path
}

describe('The list of recent files', () => {
  test('is empty before anything was opened, and when its file is spoilt', async ({ folder }) => {
    const recent = recentListIn(folder, '/home/bench')
    expect(await recent.list()).toEqual([])
    for (const spoilt of ['', '{"a":1}', '[1,2]', 'null', '["x']) {
      await writeFile(join(folder, 'recent.json'), spoilt)
      expect(await recent.list()).toEqual([])
    }
  })

  test('has the newest first, each file once', async ({ folder }) => {
    const recent = recentListIn(folder, '/home/bench')
    const [a, b] = [await made(folder, 'a'), await made(folder, 'b')]
    for (const path of [a, b, a]) await recent.add(path)
    expect((await recent.list()).map(({ name }) => name)).toEqual(['a', 'b'])
  })

  test('keeps ten', () => {
    const many = Array.from({ length: 10 }, (_, index) => `/x/${index}`)
    expect(withNewest(many, '/x/new')).toEqual(['/x/new', ...many.slice(0, 9)])
    expect(withNewest(many, '/x/5')).toHaveLength(10)
  })

  test('drops a file that is gone, for good', async ({ folder }) => {
    const recent = recentListIn(folder, '/home/bench')
    const [a, b] = [await made(folder, 'a'), await made(folder, 'b')]
    for (const path of [a, b]) await recent.add(path)
    await rm(a)
    expect((await recent.list()).map(({ name }) => name)).toEqual(['b'])
    await made(folder, 'a')
    expect((await recent.list()).map(({ name }) => name)).toEqual(['b'])
  })

  test('gives a path for an id of its own, and none for another', async ({ folder }) => {
    const recent = recentListIn(folder, '/home/bench')
    const path = await made(folder, 'a')
    await recent.add(path)
    const [file] = await recent.list()
    expect(await recent.pathOf(file?.id ?? '')).toBe(path)
    expect(await recent.pathOf(path)).toBeNull()
  })

  test('loses nothing when files come at once', async ({ folder }) => {
    const recent = recentListIn(folder, '/home/bench')
    const paths = await Promise.all(['a', 'b', 'c', 'd'].map((name) => made(folder, name)))
    await Promise.all(paths.map((path) => recent.add(path)))
    expect(await recent.list()).toHaveLength(4)
  })
})

describe('A folder for show', () => {
  test('has the home folder as a tilde, but not a folder that only begins like it', () => {
    expect(shortened('/home/bench', '/home/bench')).toBe('~')
    expect(shortened('/home/bench/work', '/home/bench')).toBe('~/work')
    expect(shortened('/home/benches/work', '/home/bench')).toBe('/home/benches/work')
  })

  test('leaves out the middle of a deep one', () => {
    const deep = '/home/bench/horns/customers/saltmarsh lane/double horns/compensating'
    expect(shortened(deep, '/home/bench')).toBe('~/horns/…/double horns/compensating')
  })
})
