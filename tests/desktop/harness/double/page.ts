import { readFileSync } from 'node:fs'
import type { Frame, Page, Route } from 'playwright-core'
import { inProgram } from './addresses.ts'
import type { ForgedFrame } from './control.ts'
import { control, copied, preventable, record } from './control.ts'
import { ipcMain } from './ipc.ts'
import { handlers } from './protocol.ts'
import { grantPermissions, isCancelled } from './session.ts'
import type { WebContents } from './webContents.ts'

const pageSide = readFileSync(new URL('./pageSide.js', import.meta.url), 'utf8')

interface Size {
  readonly width: number
  readonly height: number
}

/** Makes a Chromium page behave as the window of the program: its preload, its questions, its addresses. */
export async function preparePage(
  contents: WebContents,
  preload: string | undefined,
  size: Size,
): Promise<void> {
  if (control.context === null) throw new Error('Chromium is not there yet.')
  const page = await control.context.newPage()
  contents.page = page
  // Without a listener the driver here would dismiss what the tests' own driver wants to answer.
  page.on('dialog', () => undefined)
  await page.setViewportSize({ width: size.width, height: size.height })
  await grantPermissions(control.context)
  await answerPage(contents, page)
  await page.addInitScript({
    content: withPreload(preload === undefined ? '' : readFileSync(preload, 'utf8')),
  })
  page.on('load', () => contents.emit('did-finish-load'))
  page.on('crash', () => contents.emit('render-process-gone', {}, { reason: 'crashed', exitCode: 5 }))
  page.on('popup', (popup) => void decideOnPopup(contents, popup))
  await page.route(
    () => true,
    (route) => decideOnRequest(contents, page, route),
  )
}

/** The preload sees what a sandboxed preload sees, and the page never does. */
function withPreload(preload: string): string {
  return `{${pageSide}\npageSide((require, module, exports) => {${preload}\n})}`
}

interface AskedFrame {
  readonly url: string
  readonly parent: object | null
}

async function answerPage(contents: WebContents, page: Page): Promise<void> {
  const answer = async (
    frame: AskedFrame,
    channel: string,
    payload: readonly unknown[],
  ): Promise<unknown> => {
    const event = { sender: contents, senderFrame: frame }
    return copied(await ipcMain.answer(event, channel, payload), `answer on ${channel}`)
  }
  control.askFrom = ({ url, isEmbedded }: ForgedFrame, channel, ...payload) =>
    answer({ url, parent: isEmbedded ? {} : null }, channel, payload)
  await page.exposeBinding('askMain', async ({ frame }, channel: string, payload: readonly unknown[]) => {
    try {
      return { answer: await answer(asked(frame), channel, payload.map(fromPage)) }
    } catch (error) {
      return { error: `Error invoking remote method '${channel}': ${error}` }
    }
  })
}

function asked(frame: Frame): AskedFrame {
  return { url: inProgram(frame.url()), parent: frame.parentFrame() }
}

/** The driver carries no bytes, so the page side sends them as a list; here they become bytes again. */
function fromPage(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value
  if ('bytesOfPage' in value) return Uint8Array.from(value.bytesOfPage as number[])
  if (Array.isArray(value)) return value.map(fromPage)
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, fromPage(part)]))
}

async function decideOnPopup(contents: WebContents, popup: Page): Promise<void> {
  await popup.waitForLoadState().catch(() => undefined)
  const { action } = contents.openHandler({ url: inProgram(popup.url()) })
  record('window.open', action)
  if (action === 'deny') await popup.close()
}

async function decideOnRequest(contents: WebContents, page: Page, route: Route): Promise<void> {
  const request = route.request()
  const url = inProgram(request.url())
  const isInitiated = page.url() !== 'about:blank' && request.url() !== page.url()
  if (request.isNavigationRequest() && isInitiated && isRefused(contents, request.frame(), url)) {
    record('navigation refused', url)
    return route.fulfill({ status: 204 })
  }
  if (isCancelled(url)) {
    record('request refused', url)
    return route.abort()
  }
  return serve(route, url)
}

function isRefused(contents: WebContents, frame: Frame, url: string): boolean {
  const isMainFrame = frame.parentFrame() === null
  const { event, isPrevented } = preventable({ url, isMainFrame })
  contents.emit('will-frame-navigate', event)
  if (isMainFrame) contents.emit('will-navigate', event)
  return isPrevented()
}

const barePage = '<!doctype html><title>Bare page</title>'

function isBarePage(response: Response): boolean {
  return control.options.pageIsBare && (response.headers.get('Content-Type') ?? '').startsWith('text/html')
}

/** Answers from the program's protocol; nothing else leaves the machine. */
async function serve(route: Route, url: string): Promise<void> {
  const handler = handlers.get(new URL(url).protocol.slice(0, -1))
  if (handler === undefined) {
    record('request without a protocol', url)
    return route.abort()
  }
  const response = await handler(new Request(url, { method: route.request().method() }))
  await route.fulfill({
    status: response.status,
    headers: Object.fromEntries(response.headers),
    body: isBarePage(response) ? barePage : Buffer.from(await response.arrayBuffer()),
  })
}
