import { randomBytes } from 'node:crypto'
import type { FileHandle } from 'node:fs/promises'
import * as files from 'node:fs/promises'
import {
  chmod,
  mkdir,
  open,
  readdir,
  readFile,
  readlink,
  rm,
  stat,
  symlink,
  writeFile,
} from 'node:fs/promises'
import { join } from 'node:path'
import { afterEach, describe, expect, vi } from 'vitest'
import { writeSafely } from '../../../src-main/files/writeSafely.ts'
import { test } from '../../folder.ts'

vi.mock('node:fs/promises', async (original) => ({ ...(await original<typeof files>()) }))

afterEach(() => {
  vi.restoreAllMocks()
})

const keeping = { keepPrevious: true }
const bytes = (text: string): Uint8Array => Buffer.from(text)

function failing(code: string): Error {
  return Object.assign(new Error(code), { code })
}

/** Lets the temporary file be made, and fails at the given step of filling it. */
function failWhile(step: 'writeFile' | 'sync', code: string): void {
  const realOpen = files.open
  vi.spyOn(files, 'open').mockImplementation(async (...given) => {
    const file: FileHandle = await realOpen(...given)
    if (given[1] === 'wx') file[step] = () => Promise.reject(failing(code))
    return file
  })
}

describe('Writing a file safely', () => {
  test('makes a new file with the content, and nothing beside it', async ({ folder }) => {
    const path = join(folder, 'new.ferrule')
    expect((await writeSafely(path, bytes('new'), keeping)).kind).toBe('written')
    expect(await readFile(path, 'utf8')).toBe('new')
    expect(await readdir(folder)).toEqual(['new.ferrule'])
  })

  test('keeps the version before, and only that one', async ({ folder }) => {
    const path = join(folder, 'bass.ferrule')
    for (const text of ['one', 'two', 'three']) await writeSafely(path, bytes(text), keeping)
    expect((await readdir(folder)).sort()).toEqual(['bass.ferrule', 'bass.ferrule~'])
    expect(await readFile(path, 'utf8')).toBe('three')
    expect(await readFile(`${path}~`, 'utf8')).toBe('two')
  })

  test('keeps no version before where none is wanted', async ({ folder }) => {
    const path = join(folder, 'picture.svg')
    for (const text of ['one', 'two']) await writeSafely(path, bytes(text), { keepPrevious: false })
    expect(await readdir(folder)).toEqual(['picture.svg'])
  })

  test('follows a link and leaves it a link', async ({ folder }) => {
    await mkdir(join(folder, 'kept'))
    await writeFile(join(folder, 'kept', 'bass.ferrule'), 'old')
    await symlink(join('kept', 'bass.ferrule'), join(folder, 'link.ferrule'))
    await writeSafely(join(folder, 'link.ferrule'), bytes('new'), keeping)
    expect(await readlink(join(folder, 'link.ferrule'))).toBe(join('kept', 'bass.ferrule'))
    expect(await readFile(join(folder, 'kept', 'bass.ferrule'), 'utf8')).toBe('new')
  })

  test('leaves the permissions of the file as they were', async ({ folder }) => {
    const path = join(folder, 'shared.ferrule')
    await writeFile(path, 'old')
    await chmod(path, 0o664)
    await writeSafely(path, bytes('new'), keeping)
    expect((await stat(path)).mode & 0o777).toBe(0o664)
  })

  test('reports what the file is, as a later look at it finds it', async ({ folder }) => {
    const path = join(folder, 'bass.ferrule')
    const answer = await writeSafely(path, bytes('text'), keeping)
    const { size, mtimeMs } = await stat(path)
    expect(answer).toMatchObject({ kind: 'written', fingerprint: { sizeBytes: size, modifiedMs: mtimeMs } })
  })

  test('flushes the content before it is renamed, and the folder after', async ({ folder }) => {
    const path = join(folder, 'bass.ferrule')
    const steps: string[] = []
    const realOpen = files.open
    vi.spyOn(files, 'open').mockImplementation(async (...given) => {
      const file: FileHandle = await realOpen(...given)
      const what = given[0] === folder ? 'folder' : 'content'
      const realSync = file.sync.bind(file)
      file.sync = async () => {
        await realSync()
        steps.push(`${what} flushed`)
      }
      return file
    })
    const realRename = files.rename
    vi.spyOn(files, 'rename').mockImplementation(async (from, to) => {
      await realRename(from, to)
      steps.push('renamed')
    })
    await writeSafely(path, bytes('new'), keeping)
    expect(steps).toEqual(['content flushed', 'renamed', 'folder flushed'])
  })

  test('a reader at any moment finds one whole version', async ({ folder }) => {
    const path = join(folder, 'bass.ferrule')
    const versions = ['a', 'b'].map((letter) => Buffer.from(letter.repeat(300_000)))
    await writeSafely(path, versions[0]!, keeping)
    let isDone = false
    const writing = (async () => {
      for (let turn = 1; turn <= 30; turn += 1) await writeSafely(path, versions[turn % 2]!, keeping)
      isDone = true
    })()
    let reads = 0
    while (!isDone) {
      const found = await readFile(path)
      expect(versions.some((version) => version.equals(found))).toBe(true)
      reads += 1
    }
    await writing
    expect(reads).toBeGreaterThan(0)
  })
})

describe('A file that cannot be written', () => {
  const steps = [
    [
      'writeFile',
      'ENOSPC',
      'The disk is full, so “bass.ferrule” could not be written; the file there is unchanged.',
    ],
    [
      'sync',
      'ENOSPC',
      'The disk is full, so “bass.ferrule” could not be written; the file there is unchanged.',
    ],
    ['writeFile', 'EIO', '“bass.ferrule” could not be written (the system reports EIO).'],
  ] as const
  for (const [step, code, message] of steps) {
    test(`keeps the old content and leaves nothing behind when ${step} reports ${code}`, async ({
      folder,
    }) => {
      const path = join(folder, 'bass.ferrule')
      await writeFile(path, 'old')
      failWhile(step, code)
      expect(await writeSafely(path, bytes('new'), keeping)).toEqual({ kind: 'failed', message })
      expect(await readFile(path, 'utf8')).toBe('old')
      expect(await readdir(folder)).toEqual(['bass.ferrule'])
    })
  }

  test('keeps the old content when the last step, the renaming, fails', async ({ folder }) => {
    const path = join(folder, 'bass.ferrule')
    await writeFile(path, 'old')
    const realRename = files.rename
    vi.spyOn(files, 'rename').mockImplementation((from, to) =>
      to === path ? Promise.reject(failing('EIO')) : realRename(from, to),
    )
    expect((await writeSafely(path, bytes('new'), keeping)).kind).toBe('failed')
    expect(await readFile(path, 'utf8')).toBe('old')
    expect((await readdir(folder)).sort()).toEqual(['bass.ferrule', 'bass.ferrule~'])
  })

  test('a read-only file is not replaced', async ({ folder }) => {
    const path = join(folder, 'locked.ferrule')
    await writeFile(path, 'old')
    await chmod(path, 0o444)
    expect(await writeSafely(path, bytes('new'), keeping)).toEqual({
      kind: 'failed',
      message: '“locked.ferrule” or its folder is read-only, so it could not be written.',
    })
    expect(await readFile(path, 'utf8')).toBe('old')
  })

  test('a folder that has vanished is named', async ({ folder }) => {
    const gone = join(folder, 'gone')
    await mkdir(gone)
    await rm(gone, { recursive: true })
    expect(await writeSafely(join(gone, 'bass.ferrule'), bytes('new'), keeping)).toEqual({
      kind: 'failed',
      message: `The folder “${gone}” is no longer there, so “bass.ferrule” could not be written.`,
    })
  })

  test('a name that the system refuses is called so', async ({ folder }) => {
    const message = 'The system refuses this file name; choose a shorter or plainer one.'
    for (const name of [`${'x'.repeat(300)}.ferrule`, 'nul\u0000.ferrule']) {
      expect(await writeSafely(join(folder, name), bytes('new'), keeping)).toEqual({
        kind: 'failed',
        message,
      })
    }
    expect(await readdir(folder)).toEqual([])
  })

  test('a folder under the name, or a file where the folder should be, is said', async ({ folder }) => {
    await mkdir(join(folder, 'bass.ferrule'))
    await writeFile(join(folder, 'file'), '')
    expect(await writeSafely(join(folder, 'bass.ferrule'), bytes(''), keeping)).toMatchObject({
      message: expect.stringContaining('is the name of a folder'),
    })
    expect(await writeSafely(join(folder, 'file', 'x.ferrule'), bytes(''), keeping)).toMatchObject({
      message: expect.stringContaining('is not a folder'),
    })
  })

  test('a version before that cannot be kept does not stop the new one', async ({ folder }) => {
    const path = join(folder, 'bass.ferrule')
    await writeFile(path, 'old')
    await mkdir(`${path}~`)
    expect((await writeSafely(path, bytes('new'), keeping)).kind).toBe('written')
    expect(await readFile(path, 'utf8')).toBe('new')
    expect((await readdir(folder)).sort()).toEqual(['bass.ferrule', 'bass.ferrule~'])
  })

  test('a folder without links between files still gets its version before', async ({ folder }) => {
    const path = join(folder, 'bass.ferrule')
    await writeFile(path, 'old')
    vi.spyOn(files, 'link').mockRejectedValue(failing('EPERM'))
    expect((await writeSafely(path, bytes('new'), keeping)).kind).toBe('written')
    expect(await readFile(`${path}~`, 'utf8')).toBe('old')
  })

  test('a name as long as the system allows can be written and written again', async ({ folder }) => {
    const path = join(folder, `${randomBytes(123).toString('hex')}.ferrule`.slice(0, 254))
    for (const text of ['one', 'two']) {
      expect((await writeSafely(path, bytes(text), keeping)).kind).toBe('written')
    }
    expect(await readFile(path, 'utf8')).toBe('two')
    await (await open(path)).close()
  })
})
