import { spawnSync } from 'node:child_process'
import { chmod, mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect } from 'vitest'
import { draftStoreIn } from '../../../src-main/files/draftStore.ts'
import { writeSafely } from '../../../src-main/files/writeSafely.ts'
import { test as withFolder } from '../../folder.ts'

const keeping = { keepPrevious: true }
const full = 'The disk is full, so “bass.ferrule” could not be written; the file there is unchanged.'
const readOnly = '“bass.ferrule” or its folder is read-only, so it could not be written.'
const nobody = 65_534

interface Disk {
  readonly path: string
  makeReadOnly(): void
}

/** A disk of 256 kB of its own, with a file on it; `null` where none can be made. */
const test = withFolder.extend<{ disk: Disk | null }>({
  disk: async ({ folder }, use) => {
    const path = join(folder, 'disk')
    await mkdir(path)
    const mount = (...options: string[]): boolean =>
      process.getuid?.() === 0 && spawnSync('mount', [...options, path]).status === 0
    const isThere = process.platform === 'linux' && mount('-t', 'tmpfs', '-o', 'size=256k', 'none')
    if (isThere) await writeFile(join(path, 'bass.ferrule'), 'old')
    await use(isThere ? { path, makeReadOnly: () => void mount('-o', 'remount,ro') } : null)
    if (isThere) spawnSync('umount', [path])
  },
})

describe('A disk that is really full', () => {
  test('gives its sentence, keeps the old content and leaves nothing behind', async ({ disk, skip }) => {
    if (disk === null) return skip('no disk can be mounted here')
    const path = join(disk.path, 'bass.ferrule')
    const answer = await writeSafely(path, Buffer.alloc(1024 * 1024, 'x'), keeping)
    expect(answer).toEqual({ kind: 'failed', message: full })
    expect(await readFile(path, 'utf8')).toBe('old')
    expect(await readdir(disk.path)).toEqual(['bass.ferrule'])
    expect(await writeSafely(path, Buffer.from('small'), keeping)).toMatchObject({ kind: 'written' })
  })

  test('is told when work cannot be kept aside, and what was kept before stays', async ({ disk, skip }) => {
    if (disk === null) return skip('no disk can be mounted here')
    const drafts = draftStoreIn(disk.path)
    const draft = { name: 'Bass', text: 'kept', keptAt: 1, fileName: null }
    await drafts.keep(draft, null)
    await expect(drafts.keep({ ...draft, text: 'x'.repeat(1024 * 1024) }, null)).rejects.toThrow()
    expect(await draftStoreIn(disk.path).left()).toMatchObject([{ text: 'kept' }])
  })
})

describe('A place that is really read-only', () => {
  test('as a whole disk gives its sentence and keeps the old content', async ({ disk, skip }) => {
    if (disk === null) return skip('no disk can be mounted here')
    disk.makeReadOnly()
    const path = join(disk.path, 'bass.ferrule')
    expect(await writeSafely(path, Buffer.from('new'), keeping)).toEqual({
      kind: 'failed',
      message: readOnly,
    })
    expect(await readFile(path, 'utf8')).toBe('old')
  })

  test('as a folder gives its sentence and keeps the old content', async ({ folder, skip }) => {
    if (process.platform === 'win32') return skip('folders have no such mark there')
    const shop = join(folder, 'shop')
    const path = join(shop, 'bass.ferrule')
    await mkdir(shop)
    await writeFile(path, 'old', { mode: 0o666 })
    await chmod(path, 0o666)
    await chmod(folder, 0o755)
    await chmod(shop, 0o555)
    const isRoot = process.getuid?.() === 0
    if (isRoot) process.seteuid?.(nobody)
    try {
      const answer = await writeSafely(path, Buffer.from('new'), keeping)
      expect(answer).toEqual({ kind: 'failed', message: readOnly })
    } finally {
      if (isRoot) process.seteuid?.(0)
      await chmod(shop, 0o755)
    }
    expect(await readFile(path, 'utf8')).toBe('old')
    expect(await readdir(shop)).toEqual(['bass.ferrule'])
  })
})
