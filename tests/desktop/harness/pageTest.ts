import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'vite'
import { browserTest } from './browserForm.ts'

/** Builds a page that holds a part of the window alone, into a folder of its own. */
async function buildPage(source: URL): Promise<string> {
  const outDir = await mkdtemp(join(tmpdir(), 'ferrule-page-'))
  const root = fileURLToPath(source)
  await build({ root, configFile: false, logLevel: 'warn', build: { outDir, emptyOutDir: true } })
  return outDir
}

/** A test with the page of the folder `source` in place of the window. */
export function pageTest(source: URL) {
  return browserTest.extend({
    served: [
      // biome-ignore lint/correctness/noEmptyPattern: the test runner reads the needed fixtures from the pattern
      async ({}, use) => {
        const folder = await buildPage(source)
        await use(folder)
        await rm(folder, { recursive: true, force: true })
      },
      { scope: 'file' },
    ],
  })
}
