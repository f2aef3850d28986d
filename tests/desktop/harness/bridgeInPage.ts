import type { Page } from 'playwright-core'
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

/** A page that shows nothing may have no frames to look in. */
const often = { polling: 50 } as const

/** How many commands of a page were told already. */
const told = new WeakMap<Page, number>()

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

/** The next command that the page heard; one that is looked for is not taken away, so that no look can lose it. */
export async function heardCommand(page: Page): Promise<MenuCommand> {
  const at = told.get(page) ?? 0
  const heard = await page.waitForFunction((i) => (globalThis as HeardPage).heardCommands[i], at, often)
  told.set(page, at + 1)
  return (await heard.jsonValue()) as MenuCommand
}

export async function heardFile(page: Page): Promise<OpenAnswer> {
  const heard = await page.waitForFunction(() => (globalThis as HeardPage).heardFiles.shift(), null, often)
  return (await heard.jsonValue()) as OpenAnswer
}

export async function heardChange(page: Page): Promise<FileChange> {
  const heard = await page.waitForFunction(() => (globalThis as HeardPage).heardChanges.shift(), null, often)
  return (await heard.jsonValue()) as FileChange
}

export const cleanState: WindowState = {
  name: 'Bass in F',
  dirty: false,
  undo: null,
  redo: null,
  hasWorkbook: true,
}

export const dirtyState: WindowState = { ...cleanState, dirty: true, undo: 'Change a length' }
