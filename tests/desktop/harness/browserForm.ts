/**
 * The program in its browser form, for tests.
 *
 *     browserTest('saves by downloading', async ({ form }) => {
 *       const { page, complaints } = await form.open()
 *       …
 *     })
 *
 * `launchBrowserForm()` serves the built window on a free port of the loopback address and opens a Chromium;
 * `open()` gives a page of it, a second call another tab of the same browser. With `folder`, other built files
 * are served in place of the window's. In `browserTest` all of it ends by itself after each test.
 */
import { fileURLToPath } from 'node:url'
import type { BrowserContext, Page } from 'playwright-core'
import { serveWindow } from '../../../src-main/server/server.ts'
import { test as base } from '../../folder.ts'
import type { Chromium } from './chromium.ts'
import { launchChromium } from './chromium.ts'
import { complaintsOf } from './complaints.ts'

export interface OpenPage {
  readonly page: Page
  /** Errors of the page, uncaught or on its console; a refusal by its security policy is one of them. */
  readonly complaints: readonly string[]
}

export interface BrowserForm {
  readonly context: BrowserContext
  readonly address: string
  /** Opens a tab. `before` runs in the page ahead of every script of it, and must stand alone. */
  open(before?: () => void): Promise<OpenPage>
  close(): Promise<void>
}

const builtWindow = fileURLToPath(new URL('../../../out/renderer', import.meta.url))

/** Without `shared` it has a Chromium of its own. In a shared one its new port is an origin without a past. */
export async function launchBrowserForm(folder = builtWindow, shared?: Chromium): Promise<BrowserForm> {
  const server = await serveWindow(folder, 0)
  const chromium = shared ?? (await launchChromium())
  const pages: Page[] = []
  return {
    context: chromium.context,
    address: server.address,
    open: async (before) => {
      const page = await chromium.context.newPage()
      pages.push(page)
      const complaints = complaintsOf(page)
      if (before !== undefined) await page.addInitScript(before)
      await page.goto(server.address, { waitUntil: 'load' })
      return { page, complaints }
    },
    close: async () => {
      await Promise.all(pages.map((page) => page.close()))
      if (shared === undefined) await chromium.close()
      await server.stop()
    },
  }
}

interface BrowserFixtures {
  readonly chromium: Chromium
  /** The built files that are served. */
  readonly served: string
  readonly form: BrowserForm
}

/** A test with a browser form of its own; the Chromium is shared by the tests of a file. */
export const browserTest = base.extend<BrowserFixtures>({
  // biome-ignore-start lint/correctness/noEmptyPattern: the test runner reads the needed fixtures from the pattern
  chromium: [
    async ({}, use) => {
      const chromium = await launchChromium()
      await use(chromium)
      await chromium.close()
    },
    { scope: 'file' },
  ],
  served: [async ({}, use) => use(builtWindow), { scope: 'file' }],
  // biome-ignore-end lint/correctness/noEmptyPattern: the test runner reads the needed fixtures from the pattern
  form: async ({ chromium, served }, use) => {
    const form = await launchBrowserForm(served, chromium)
    await use(form)
    await form.close()
  },
})
