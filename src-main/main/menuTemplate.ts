import type { MenuItemConstructorOptions } from 'electron'
import type { MenuCommand, RecentWorkbook, WindowState } from '#shared/bridge/bridge.ts'
import { shortcuts } from '#shared/bridge/shortcuts.ts'
import { words } from './words.ts'

/** What a menu item does when it is chosen. */
export interface MenuActs {
  command(command: MenuCommand): void
  openRecent(id: string): void
  clearRecent(): void
}

export interface MenuContent {
  readonly state: WindowState
  readonly recent: readonly RecentWorkbook[]
  readonly platform: NodeJS.Platform
}

type Item = MenuItemConstructorOptions

const separator: Item = { type: 'separator' }

/** The whole menu bar. Every item that a person can choose has an id that stays the same. */
export function menuTemplate(content: MenuContent, acts: MenuActs): Item[] {
  const onMac = content.platform === 'darwin'
  return [
    ...(onMac ? [{ role: 'appMenu', id: 'program' } as const] : []),
    { id: 'file', label: words.file, submenu: fileMenu(content, acts, onMac) },
    { id: 'edit', label: words.edit, submenu: editMenu(content, acts) },
    { id: 'view', label: words.view, submenu: viewMenu() },
    ...(onMac ? [{ role: 'windowMenu', id: 'window' } as const] : []),
    { id: 'helpMenu', label: words.help, role: 'help', submenu: helpMenu(content, acts, onMac) },
  ]
}

function fileMenu(content: MenuContent, acts: MenuActs, onMac: boolean): Item[] {
  const { hasWorkbook } = content.state
  const item = itemsOf(content, acts)
  return [
    item('new', words.new),
    item('open', words.open),
    { id: 'openRecent', label: words.openRecent, submenu: recentMenu(content.recent, acts) },
    item('startPage', words.startPage, hasWorkbook),
    separator,
    item('save', words.save, hasWorkbook),
    item('saveAs', words.saveAs, hasWorkbook),
    separator,
    item('report', words.report, hasWorkbook),
    item('print', words.print, hasWorkbook),
    item('pdf', words.pdf, hasWorkbook),
    separator,
    { id: 'close', label: words.close, role: 'close' },
    ...(onMac ? [] : [{ id: 'quit', label: words.quit, role: 'quit' } as const]),
  ]
}

function recentMenu(recent: readonly RecentWorkbook[], acts: MenuActs): Item[] {
  if (recent.length === 0) return [{ id: 'noRecent', label: words.noRecent, enabled: false }]
  const files = recent.map(({ id, name, place }) => ({
    id: `recent-${id}`,
    label: `${literal(name)} — ${literal(place)}`,
    click: () => acts.openRecent(id),
  }))
  return [
    ...files,
    separator,
    { id: 'clearRecent', label: words.clearRecent, click: () => acts.clearRecent() },
  ]
}

function editMenu(content: MenuContent, acts: MenuActs): Item[] {
  const { undo, redo } = content.state
  const item = itemsOf(content, acts)
  return [
    item('undo', named(words.undo, undo), undo !== null),
    item('redo', named(words.redo, redo), redo !== null),
    separator,
    item('palette', words.palette),
    item('settings', words.settings),
    separator,
    { id: 'cut', label: words.cut, role: 'cut' },
    { id: 'copy', label: words.copy, role: 'copy' },
    { id: 'paste', label: words.paste, role: 'paste' },
    { id: 'selectAll', label: words.selectAll, role: 'selectAll' },
  ]
}

function viewMenu(): Item[] {
  return [
    { id: 'actualSize', label: words.actualSize, role: 'resetZoom' },
    { id: 'zoomIn', label: words.zoomIn, role: 'zoomIn' },
    { id: 'zoomOut', label: words.zoomOut, role: 'zoomOut' },
    separator,
    { id: 'fullScreen', label: words.fullScreen, role: 'togglefullscreen' },
  ]
}

function helpMenu(content: MenuContent, acts: MenuActs, onMac: boolean): Item[] {
  const item = itemsOf(content, acts)
  const about: Item[] = onMac ? [] : [separator, { id: 'about', label: words.about, role: 'about' }]
  return [item('help', words.helpPages), ...about]
}

function itemsOf(content: MenuContent, acts: MenuActs) {
  return (command: MenuCommand, label: string, enabled = true): Item => {
    const keys = accelerator(command, content.platform)
    const shown = { id: command, label, enabled, click: () => acts.command(command) }
    return keys === null ? shown : { ...shown, accelerator: keys }
  }
}

/** Windows redoes with Control+Y, the others with Shift and the keys of undo. */
function accelerator(command: MenuCommand, platform: NodeJS.Platform): string | null {
  const [first, second] = shortcuts[command] ?? []
  const shortcut = command === 'redo' && platform === 'win32' ? second : first
  if (shortcut === undefined) return null
  const key = shortcut.key.toUpperCase()
  return `${shortcut.main ? 'CmdOrCtrl+' : ''}${shortcut.shift ? 'Shift+' : ''}${key}`
}

function named(verb: string, step: string | null): string {
  return step === null ? verb : `${verb} “${literal(step)}”`
}

/** A single ampersand in a label would underline the letter after it. */
function literal(text: string): string {
  return text.replaceAll('&', '&&')
}
