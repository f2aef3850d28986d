import type { Page } from 'playwright-core'
import { expect } from 'vitest'
import type { Bridge, FileChange, MenuCommand, OpenAnswer, WindowState } from '#shared/bridge/bridge.ts'
import type { Question } from '../../../src-main/channels/channels.ts'

/** The page as these tests use it, in place of the window: what it heard is kept on the page itself. */
type HeardPage = typeof globalThis & {
  ferrule: Bridge
  heardCommands: MenuCommand[]
  heardFiles: OpenAnswer[]
  heardChanges: FileChange[]
}

/** Asks the bridge from inside the page, where it stands under a name. */
export function askingOf(place: 'ferrule' | 'bridgeInForce') {
  return function ask<Q extends Question>(
    page: Page,
    question: Q,
    ...payload: Parameters<Bridge[Q]>
  ): Promise<Awaited<ReturnType<Bridge[Q]>>> {
    return page.evaluate(
      ([bridge, name, given]) => {
        const places = globalThis as unknown as Record<
          string,
          Record<string, (...given: unknown[]) => unknown>
        >
        return places[bridge]?.[name]?.(...given)
      },
      [place, question, payload as unknown[]] as const,
    ) as Promise<Awaited<ReturnType<Bridge[Q]>>>
  }
}

/** Asks the desktop's bridge. */
export const ask = askingOf('ferrule')

const noneTold = { heardCommands: 0, heardFiles: 0, heardChanges: 0 }

/** How much of what a page heard was told already. */
const told = new WeakMap<Page, typeof noneTold>()

/** Begins to keep the commands and files that reach the page. */
export function listen(page: Page): Promise<void> {
  told.delete(page)
  return page.evaluate(() => {
    const heard = globalThis as HeardPage
    heard.heardCommands = []
    heard.heardFiles = []
    heard.heardChanges = []
    heard.ferrule.onCommand((command) => heard.heardCommands.push(command))
    heard.ferrule.onFile((answer) => heard.heardFiles.push(answer))
    heard.ferrule.onFileChanged((change) => heard.heardChanges.push(change))
  })
}

/** The next command that the page heard. */
export function heardCommand(page: Page): Promise<MenuCommand> {
  return nextHeard(page, 'heardCommands')
}

/** The next file that the page heard of. */
export function heardFile(page: Page): Promise<OpenAnswer> {
  return nextHeard(page, 'heardFiles')
}

/** The next change of the current file that the page heard of. */
export function heardChange(page: Page): Promise<FileChange> {
  return nextHeard(page, 'heardChanges')
}

/** Looks from outside: a page that shows nothing may have neither frames nor timers to look by. */
async function nextHeard<Heard>(page: Page, list: keyof typeof noneTold): Promise<Heard> {
  const done = told.get(page) ?? noneTold
  const look = (): Promise<unknown> =>
    page.evaluate(([name, i]) => (globalThis as HeardPage)[name][i], [list, done[list]] as const)
  await expect.poll(look, { timeout: 30_000 }).toBeDefined()
  told.set(page, { ...done, [list]: done[list] + 1 })
  return (await look()) as Heard
}

export const cleanState: WindowState = {
  name: 'Bass in F',
  dirty: false,
  undo: null,
  redo: null,
  hasWorkbook: true,
}

export const dirtyState: WindowState = { ...cleanState, dirty: true, undo: 'Change a length' }
