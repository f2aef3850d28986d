import type { ChildProcess } from 'node:child_process'
import { fork } from 'node:child_process'
import { existsSync } from 'node:fs'
import { mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import type { Chromium } from './chromium.ts'
import { launchChromium } from './chromium.ts'
import { complaintsOf } from './complaints.ts'
import type { Desktop, LaunchOptions } from './desktop.ts'
import type { FromChild } from './double/child.ts'
import type { DoubleOptions } from './double/control.ts'
import { scriptDialogs, scripting } from './scripting.ts'

const root = new URL('../../..', import.meta.url).pathname

/**
 * Runs the built main process, preload and page, with Electron's own module replaced by one over Chromium.
 * Without `shared` it has a Chromium of its own, which ends with it.
 */
export async function openDouble(options: LaunchOptions = {}, shared?: Chromium): Promise<Desktop> {
  const chromium = shared ?? (await launchChromium())
  const userData = options.userData ?? (await mkdtemp(join(tmpdir(), 'ferrule-data-')))
  if (options.userData === undefined) await forgetStorage(chromium)
  const opening = nextPage(chromium)
  const child = forkMain({
    userData,
    cdpPort: chromium.cdpPort,
    args: options.files ?? [],
    lockIsTaken: false,
    pageIsBare: options.bare ?? false,
  })
  const exited = new Promise<number | null>((resolve) => child.once('exit', resolve))
  await readyOf(child)
  const inMain = inMainOf(child)
  await scriptDialogs(inMain)
  const { page, complaints } = await opening
  const ended = exited.then(async (code) => {
    await (shared === undefined ? chromium.close() : page.close().catch(() => undefined))
    return code
  })
  await untilLoaded(page)
  const kill = async (): Promise<void> => {
    child.kill('SIGKILL')
    await ended
  }
  return { userData, page, complaints, ended, inMain, kill, ...scripting(inMain) }
}

/** The page that the program opens as its window, listened to from its beginning. */
function nextPage({ context }: Chromium): Promise<{ page: Page; complaints: readonly string[] }> {
  return new Promise((resolve) => {
    context.once('page', (page) => resolve({ page, complaints: complaintsOf(page) }))
  })
}

/** New user data begin with nothing in the page's own storage either. */
async function forgetStorage({ context }: Chromium): Promise<void> {
  const [keeper] = context.pages()
  if (keeper === undefined) return
  const devtools = await context.newCDPSession(keeper)
  await devtools.send('Storage.clearDataForOrigin', {
    origin: 'https://ferrule.app.test',
    storageTypes: 'all',
  })
  await devtools.detach()
}

/** Starts a main process beside a running one; resolves with its exit code. */
export async function startSecond(userData: string, files: readonly string[]): Promise<number | null> {
  const child = forkMain({ userData, cdpPort: 0, args: files, lockIsTaken: true, pageIsBare: true })
  return new Promise((resolve) => child.once('exit', resolve))
}

function forkMain(options: DoubleOptions): ChildProcess {
  if (!existsSync(join(root, 'out/main/index.js'))) throw new Error('Build the program first: npm run build')
  return fork(new URL('./double/child.ts', import.meta.url), [], {
    cwd: root,
    execArgv: ['--import', 'tsx'],
    serialization: 'advanced',
    env: { ...process.env, DOUBLE_OPTIONS: JSON.stringify(options) },
  })
}

function readyOf(child: ChildProcess): Promise<void> {
  return new Promise((resolve, reject) => {
    child.once('message', () => resolve())
    child.once('exit', (code) =>
      reject(new Error(`The main process ended with ${code} before it was ready.`)),
    )
  })
}

type Settle = (message: Exclude<FromChild, { kind: 'ready' }>) => void

function inMainOf(child: ChildProcess): Desktop['inMain'] {
  let lastId = 0
  const waiting = new Map<number, Settle>()
  const settle: Settle = (message) => {
    waiting.get(message.id)?.(message)
    waiting.delete(message.id)
  }
  child.on('message', (message: FromChild) => {
    if (message.kind !== 'ready') settle(message)
  })
  child.once('exit', () => {
    const message = 'The main process ended before it answered.'
    for (const id of [...waiting.keys()]) settle({ kind: 'error', id, message })
  })
  return (act, given) => {
    lastId += 1
    const id = lastId
    return new Promise((resolve, reject) => {
      waiting.set(id, (message) => {
        if (message.kind === 'answer') resolve(message.value as never)
        else reject(new Error(message.message))
      })
      child.send({ id, source: act.toString(), given }, (error) => {
        if (error !== null)
          settle({ kind: 'error', id, message: `The main process has ended: ${error.message}` })
      })
    })
  }
}

async function untilLoaded(page: Page): Promise<void> {
  await page.waitForURL((url) => url.protocol === 'https:')
  await page.waitForLoadState()
}
