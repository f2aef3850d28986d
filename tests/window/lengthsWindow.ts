import { resolve } from 'node:path'
import { type Browser, chromium, type Page } from 'playwright-core'
import { type RunningServer, serveWindow } from '../../src-main/server/server.ts'

/** The built window in Chromium, served as the browser form serves it. Build first: `npm run build`. */
export interface OpenedWindow {
  /** A page of its own, with an example open on the Lengths page; closes the one before. */
  readonly lengthsOf: (title: RegExp, colorScheme?: 'light' | 'dark') => Promise<LengthsPage>
  readonly close: () => Promise<void>
}

export interface LengthsPage {
  readonly page: Page
  /** Errors of the page, uncaught or on its console. */
  readonly complaints: readonly string[]
}

export async function openWindow(): Promise<OpenedWindow> {
  const server = await serveWindow(resolve(import.meta.dirname, '../../out/renderer'), 0)
  const browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--disable-background-networking'],
  })
  return {
    lengthsOf: (title, colorScheme = 'light') => openLengths(browser, server, title, colorScheme),
    close: async () => {
      await browser.close()
      await server.stop()
    },
  }
}

async function openLengths(
  browser: Browser,
  server: RunningServer,
  title: RegExp,
  colorScheme: 'light' | 'dark',
): Promise<LengthsPage> {
  for (const earlier of browser.contexts()) await earlier.close()
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, colorScheme })
  const page = await context.newPage()
  const complaints: string[] = []
  page.on('pageerror', (error) => complaints.push(error.message))
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text())
  })
  await page.goto(server.address)
  await page.getByRole('button', { name: title }).click()
  await page.getByRole('tab', { name: 'Lengths' }).click()
  return { page, complaints }
}
