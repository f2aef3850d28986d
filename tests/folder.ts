import { mkdtemp, realpath, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { test as base } from 'vitest'

/** A test with an empty folder of its own. */
export const test = base.extend<{ folder: string }>({
  // biome-ignore lint/correctness/noEmptyPattern: the test runner reads the needed fixtures from the pattern
  folder: async ({}, use) => {
    const folder = await realpath(await mkdtemp(join(tmpdir(), 'ferrule-test-')))
    await use(folder)
    await rm(folder, { recursive: true, force: true })
  },
})
