import { EventEmitter } from 'node:events'
import { setTimeout } from 'node:timers/promises'
import type { WebPreferences } from 'electron'
import type { Page } from 'playwright-core'
import { inProgram } from './addresses.ts'
import { app } from './app.ts'
import { copied, record } from './control.ts'

type OpenHandler = (details: { url: string }) => { action: 'allow' | 'deny' }

interface PdfOptions {
  readonly pageSize?: string
  readonly landscape?: boolean
  readonly printBackground?: boolean
}

/** What Electron takes where the program says nothing. */
const defaultPreferences: WebPreferences = { sandbox: true, contextIsolation: true, nodeIntegration: false }

export class WebContents extends EventEmitter {
  page: Page | null = null
  openHandler: OpenHandler = () => ({ action: 'allow' })

  constructor(private readonly preferences: WebPreferences) {
    super()
    app.emit('web-contents-created', {}, this)
  }
  getLastWebPreferences(): WebPreferences {
    return { ...defaultPreferences, ...this.preferences }
  }
  getURL(): string {
    return this.page === null ? '' : inProgram(this.page.url())
  }
  setWindowOpenHandler(handler: OpenHandler): void {
    this.openHandler = handler
  }
  send(channel: string, ...payload: unknown[]): void {
    const sent = copied(payload, `sending ${channel}`)
    const arriving = this.page === null ? undefined : deliver(this.page, channel, sent)
    arriving?.catch((error: unknown) => record('sending failed', channel, String(error)))
  }
  async printToPDF({ pageSize, landscape, printBackground }: PdfOptions): Promise<Buffer> {
    if (this.page === null) throw new Error('There is no page to print.')
    return this.page.pdf({
      format: pageSize ?? 'Letter',
      landscape: landscape ?? false,
      printBackground: printBackground ?? false,
    })
  }
  print(options: unknown, done: (printed: boolean, reason: string) => void): void {
    record('print', options)
    done(true, '')
  }
  reload(): void {
    void this.page?.reload()
  }
}

/** What is sent while the driver here does not know yet that the page was loaded is sent again. */
async function deliver(page: Page, channel: string, payload: unknown[], tries = 40): Promise<void> {
  try {
    await page.evaluate(
      ([name, given]) => {
        const { hear } = globalThis as unknown as { hear: (channel: string, payload: unknown[]) => void }
        hear(name, given)
      },
      [channel, payload] as const,
    )
  } catch (error) {
    const isEarly = /context was destroyed|Cannot find context|hear is not a function/.test(String(error))
    if (!isEarly || page.isClosed() || tries === 0) throw error
    await setTimeout(50)
    await deliver(page, channel, payload, tries - 1)
  }
}
