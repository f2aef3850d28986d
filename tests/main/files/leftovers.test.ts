import { readdir, utimes, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect } from 'vitest'
import { sweepLeftovers } from '../../../src-main/files/leftovers.ts'
import { test } from '../../folder.ts'

const nowMs = Date.UTC(2026, 5, 1)

async function aged(folder: string, name: string, ageMinutes: number): Promise<void> {
  await writeFile(join(folder, name), '')
  const seconds = nowMs / 1000 - ageMinutes * 60
  await utimes(join(folder, name), seconds, seconds)
}

describe('Sweeping what a crash left', () => {
  test('takes old temporary files of ours and nothing else', async ({ folder }) => {
    await aged(folder, '.ferrule-0123456789ab.part', 61)
    await aged(folder, '.ferrule-ba9876543210.part', 59)
    await aged(folder, '.ferrule-notes.part', 999)
    await aged(folder, 'bass.ferrule', 999)
    await aged(folder, 'bass.ferrule~', 999)
    await sweepLeftovers(folder, nowMs)
    expect((await readdir(folder)).sort()).toEqual([
      '.ferrule-ba9876543210.part',
      '.ferrule-notes.part',
      'bass.ferrule',
      'bass.ferrule~',
    ])
  })

  test('a folder that is gone is no trouble', async ({ folder }) => {
    await expect(sweepLeftovers(join(folder, 'gone'), nowMs)).resolves.toBeUndefined()
  })
})
