import { existsSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { createServer } from 'node:net'
import type { BrowserContext } from 'playwright-core'
import { chromium } from 'playwright-core'
import { ownChromium } from './chromiumFlags.ts'

const { executablePath, args } = ownChromium

/** A Chromium with an empty profile that goes with it, and that other drivers can join at `cdpPort`. */
export interface Chromium {
  readonly context: BrowserContext
  readonly cdpPort: number
  close(): Promise<void>
}

export async function launchChromium(): Promise<Chromium> {
  if (!existsSync(executablePath))
    throw new Error(`These tests drive ${executablePath}, which is not installed.`)
  const cdpPort = await freePort()
  const context = await chromium.launchPersistentContext('', {
    executablePath,
    headless: true,
    acceptDownloads: true,
    viewport: { width: 1360, height: 880 },
    args: [...args, `--remote-debugging-port=${cdpPort}`],
  })
  // Scripts run without the test runner mark their functions with this name, and the mark is sent along.
  await context.addInitScript({ content: 'globalThis.__name = (named) => named' })
  return { context, cdpPort, close: () => context.close().catch(() => undefined) }
}

export function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer().once('error', reject)
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address() as AddressInfo
      server.close(() => resolve(port))
    })
  })
}
