import { readFile, rm, stat, utimes, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect } from 'vitest'
import type { Fingerprint } from '../../../src-main/files/fingerprint.ts'
import { fingerprintOf, standingOf } from '../../../src-main/files/fingerprint.ts'
import { test } from '../../folder.ts'

async function seen(path: string, text: string): Promise<Fingerprint> {
  await writeFile(path, text)
  return fingerprintOf(await readFile(path), await stat(path))
}

describe('Noticing a change from outside', () => {
  test('a file left alone is the same', async ({ folder }) => {
    const path = join(folder, 'x')
    expect(await standingOf(path, await seen(path, 'text'))).toEqual({ kind: 'same' })
  })

  test('a file that is gone is told from one that was changed', async ({ folder }) => {
    const path = join(folder, 'x')
    const known = await seen(path, 'text')
    await rm(path)
    expect(await standingOf(path, known)).toEqual({ kind: 'gone' })
  })

  test('a file that was only touched is the same', async ({ folder }) => {
    const path = join(folder, 'x')
    const known = await seen(path, 'text')
    await utimes(path, 1, 1)
    expect(await standingOf(path, known)).toEqual({ kind: 'same' })
  })

  test('other content is a change, of the same length too', async ({ folder }) => {
    const path = join(folder, 'x')
    const known = await seen(path, 'text')
    await writeFile(path, 'test')
    await utimes(path, 1, 1)
    expect(await standingOf(path, known)).toEqual({ kind: 'changed', modifiedMs: 1000 })
    await writeFile(path, 'longer text')
    expect(await standingOf(path, known)).toMatchObject({ kind: 'changed' })
  })
})
