import { setTimeout } from 'node:timers/promises'
import type { AskedDialog, Desktop, DialogName, ElectronModule, MenuNode } from './desktop.ts'

type InMain = Desktop['inMain']

/** What the scripted dialogs keep in the main process. */
interface Script {
  readonly answers: {
    readonly dialog: DialogName
    readonly path: string | null
    readonly button: string | null
  }[]
  readonly asked: AskedDialog[]
}

type Scripted = typeof globalThis & { dialogScript: Script }

/** Puts scripted answers in place of the native dialogs. A question without an answer fails, and is remembered. */
export function scriptDialogs(inMain: InMain): Promise<void> {
  return inMain(({ dialog }) => {
    const script: Script = { answers: [], asked: [] }
    ;(globalThis as Scripted).dialogScript = script
    const answer = async (name: DialogName, given: unknown[]): Promise<unknown> => {
      const options = given.at(-1) as AskedDialog['options']
      script.asked.push({ dialog: name, options: JSON.parse(JSON.stringify(options)) })
      const next = script.answers.shift()
      if (next === undefined || next.dialog !== name) throw new Error(`The test has no answer for ${name}.`)
      const canceled = next.path === null
      if (name === 'showOpenDialog') return { canceled, filePaths: canceled ? [] : [next.path] }
      if (name === 'showSaveDialog') return { canceled, filePath: next.path ?? '' }
      const response = (options.buttons ?? []).indexOf(next.button ?? '')
      if (response < 0) throw new Error(`The question has no button “${next.button}”.`)
      return { response, checkboxChecked: false }
    }
    const scripted = dialog as unknown as Record<DialogName, (...given: unknown[]) => Promise<unknown>>
    scripted.showOpenDialog = (...given) => answer('showOpenDialog', given)
    scripted.showSaveDialog = (...given) => answer('showSaveDialog', given)
    scripted.showMessageBox = (...given) => answer('showMessageBox', given)
  }, null)
}

type Scriptable = Pick<
  Desktop,
  'answerFile' | 'answerMessage' | 'askedDialogs' | 'chooseMenu' | 'menu' | 'title' | 'pressClose'
>

/** Everything that a test does by way of the main process, the same in the double and in Electron. */
export function scripting(inMain: InMain): Scriptable {
  const prepare = (answer: Script['answers'][number]): Promise<void> =>
    inMain((_electron, given) => void (globalThis as Scripted).dialogScript.answers.push(given), answer)
  return {
    answerFile: (dialog, path) => prepare({ dialog, path, button: null }),
    answerMessage: (button) => prepare({ dialog: 'showMessageBox', path: null, button }),
    askedDialogs: () => inMain(() => (globalThis as Scripted).dialogScript.asked, null),
    chooseMenu: (id) => patiently(() => inMain(chooseMenu, id)),
    menu: () => inMain(readMenu, null),
    title: () => inMain(({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.getTitle() ?? '', null),
    pressClose: () => inMain(({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.close(), null),
  }
}

/** The menus follow the window a moment later: a hand that finds an item disabled tries again. */
async function patiently(act: () => Promise<void>, tries = 20): Promise<void> {
  try {
    await act()
  } catch (error) {
    if (tries === 0 || !String(error).includes('is disabled')) throw error
    await setTimeout(100)
    await patiently(act, tries - 1)
  }
}

function chooseMenu({ Menu, BrowserWindow }: ElectronModule, id: string): void {
  const item = Menu.getApplicationMenu()?.getMenuItemById(id)
  if (!item) throw new Error(`There is no menu item ${id}.`)
  if (!item.enabled) throw new Error(`The menu item ${id} is disabled.`)
  const window = BrowserWindow.getAllWindows()[0]
  item.click(undefined, window, window?.webContents)
}

function readMenu({ Menu }: ElectronModule): MenuNode[] {
  const read = (items: readonly Electron.MenuItem[]): MenuNode[] =>
    items
      .filter((item) => item.type !== 'separator')
      .map((item) => ({
        id: item.id,
        label: item.label,
        enabled: item.enabled,
        accelerator: item.accelerator ?? null,
        items: item.submenu ? read(item.submenu.items) : [],
      }))
  return read(Menu.getApplicationMenu()?.items ?? [])
}
