import type { MenuCommand } from './bridge.ts'

/** The keys of a command. `main` is Control, or Command on a Mac; `key` is as in a keyboard event, lower case. */
export interface Shortcut {
  readonly key: string
  readonly main: boolean
  readonly shift: boolean
}

const plain = (key: string): Shortcut => ({ key, main: false, shift: false })
const main = (key: string): Shortcut => ({ key, main: true, shift: false })
const mainShift = (key: string): Shortcut => ({ key, main: true, shift: true })

/** The one table of keys behind the desktop's menus and the browser's keyboard; the first is the one shown. */
export const shortcuts: Readonly<Partial<Record<MenuCommand, readonly [Shortcut, ...Shortcut[]]>>> = {
  new: [main('n')],
  open: [main('o')],
  save: [main('s')],
  saveAs: [mainShift('s')],
  undo: [main('z')],
  redo: [mainShift('z'), main('y')],
  print: [main('p')],
  help: [plain('f1')],
  palette: [main('k')],
}

/**
 * How a shortcut is written for the person, with the signs of a Mac when `onMac`.
 *
 * @example shortcutText({ key: 's', main: true, shift: true }, false) // 'Ctrl+Shift+S'
 */
export function shortcutText(shortcut: Shortcut, onMac: boolean): string {
  const key = shortcut.key.toUpperCase()
  if (onMac) return `${shortcut.shift ? '⇧' : ''}${shortcut.main ? '⌘' : ''}${key}`
  return `${shortcut.main ? 'Ctrl+' : ''}${shortcut.shift ? 'Shift+' : ''}${key}`
}
