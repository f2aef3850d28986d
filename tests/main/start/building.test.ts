import { mkdir, utimes, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { describe, expect } from 'vitest'
import { isStale } from '../../../src-main/start/building.ts'
import { test } from '../../folder.ts'

async function put(root: string, path: string, seconds: number): Promise<void> {
  await mkdir(dirname(join(root, path)), { recursive: true })
  await writeFile(join(root, path), '')
  await utimes(join(root, path), seconds, seconds)
  // A folder is as new as the last file made in it.
  for (let folder = dirname(path); folder !== '.'; folder = dirname(folder)) {
    await utimes(join(root, folder), seconds, seconds)
  }
}

const products = ['out/main/index.js', 'out/preload/index.cjs', 'out/renderer/index.html']

describe('Whether the program must be built', () => {
  test('it must while a part of it is missing', async ({ folder }) => {
    await put(folder, 'src-main/main/index.ts', 100)
    for (const product of products) {
      expect(isStale(folder)).toBe(true)
      await put(folder, product, 200)
    }
    expect(isStale(folder)).toBe(false)
  })

  test('it must when any source is newer than any part', async ({ folder }) => {
    for (const product of products) await put(folder, product, 200)
    await put(folder, 'src-shared/pitch/cents.ts', 100)
    expect(isStale(folder)).toBe(false)
    await put(folder, 'src-shared/pitch/cents.ts', 201)
    expect(isStale(folder)).toBe(true)
  })
})
