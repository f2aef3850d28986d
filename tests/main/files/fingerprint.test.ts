import { readFile, rm, stat, utimes, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect } from 'vitest'
import type { Fingerprint } from '../../../src-main/files/fingerprint.ts'
import { fingerprintOf, isUnchanged } from '../../../src-main/files/fingerprint.ts'
import { test } from '../../folder.ts'

async function seen(path: string, text: string): Promise<Fingerprint> {
  await writeFile(path, text)
  return fingerprintOf(await readFile(path), await stat(path))
}

describe('Noticing a change from outside', () => {
  test('a file left alone is unchanged', async ({ folder }) => {
    const path = join(folder, 'x')
    expect(await isUnchanged(path, await seen(path, 'text'))).toBe(true)
  })

  test('a file that is gone counts as unchanged: writing it loses nothing', async ({ folder }) => {
    const path = join(folder, 'x')
    const known = await seen(path, 'text')
    await rm(path)
    expect(await isUnchanged(path, known)).toBe(true)
  })

  test('a file that was only touched is unchanged', async ({ folder }) => {
    const path = join(folder, 'x')
    const known = await seen(path, 'text')
    await utimes(path, 1, 1)
    expect(await isUnchanged(path, known)).toBe(true)
  })

  test('other content is a change, of the same length too', async ({ folder }) => {
    const path = join(folder, 'x')
    const known = await seen(path, 'text')
    await writeFile(path, 'test')
    await utimes(path, 1, 1)
    expect(await isUnchanged(path, known)).toBe(false)
    await writeFile(path, 'longer text')
    expect(await isUnchanged(path, known)).toBe(false)
  })
})
