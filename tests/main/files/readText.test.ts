import { execFileSync } from 'node:child_process'
import { readdir, truncate, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect } from 'vitest'
import { readText } from '../../../src-main/files/readText.ts'
import { test } from '../../folder.ts'

const limitBytes = 20 * 1024 * 1024

describe('Reading a workbook’s text', () => {
  test('an empty file is empty text', async ({ folder }) => {
    await writeFile(join(folder, 'x'), '')
    expect(await readText(join(folder, 'x'))).toMatchObject({ kind: 'read', text: '' })
  })

  test('a byte order mark is no part of the text', async ({ folder }) => {
    await writeFile(join(folder, 'x'), Buffer.from([0xef, 0xbb, 0xbf, 0x7b]))
    expect(await readText(join(folder, 'x'))).toMatchObject({ kind: 'read', text: '{' })
  })

  test('a file of exactly 20 MB is read, one byte more is refused', async ({ folder }) => {
    const path = join(folder, 'x')
    await writeFile(path, '')
    await truncate(path, limitBytes)
    expect((await readText(path)).kind).toBe('read')
    await truncate(path, limitBytes + 1)
    expect(await readText(path)).toMatchObject({ kind: 'failed', message: expect.stringContaining('20 MB') })
  })

  test('a file far above the limit is refused without being read', async ({ folder }) => {
    const path = join(folder, 'x')
    await writeFile(path, '')
    await truncate(path, 2 ** 40)
    expect((await readText(path)).kind).toBe('failed')
  })

  test.skipIf(process.platform !== 'linux')('no file stays open, read or refused', async ({ folder }) => {
    const path = join(folder, 'x')
    await writeFile(path, Buffer.from([0xff]))
    await writeFile(join(folder, 'y'), 'text')
    const openFiles = async () => (await readdir('/proc/self/fd')).length
    const before = await openFiles()
    for (let time = 0; time < 20; time++) for (const name of ['x', 'y']) await readText(join(folder, name))
    expect(await openFiles()).toBeLessThan(before + 10)
  })

  test('what is not UTF-8 is refused', async ({ folder }) => {
    for (const bytes of [[0xff], [0xc3, 0x28], [0xed, 0xa0, 0x80]]) {
      await writeFile(join(folder, 'x'), Buffer.from(bytes))
      expect(await readText(join(folder, 'x'))).toMatchObject({ message: expect.stringContaining('UTF-8') })
    }
  })

  test.skipIf(process.platform === 'win32')(
    'a pipe without a writer does not hold the program',
    async ({ folder }) => {
      execFileSync('mkfifo', [join(folder, 'pipe')])
      expect(await readText(join(folder, 'pipe'))).toEqual({
        kind: 'failed',
        message: '“pipe” is not a file.',
      })
    },
  )
})
