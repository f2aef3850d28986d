import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'vite'
import { browserTest } from './browserForm.ts'

const source = fileURLToPath(new URL('../bridgePage', import.meta.url))

/** Builds the page that holds the bridge alone, into a folder of its own. */
async function buildBridgePage(): Promise<string> {
  const outDir = await mkdtemp(join(tmpdir(), 'ferrule-page-'))
  await build({ root: source, configFile: false, logLevel: 'warn', build: { outDir, emptyOutDir: true } })
  return outDir
}

/** A test with the browser form of the bridge, alone on its page. */
export const bridgeTest = browserTest.extend({
  served: [
    // biome-ignore lint/correctness/noEmptyPattern: the test runner reads the needed fixtures from the pattern
    async ({}, use) => {
      const folder = await buildBridgePage()
      await use(folder)
      await rm(folder, { recursive: true, force: true })
    },
    { scope: 'file' },
  ],
})
