import type { MenuItemConstructorOptions } from 'electron'
import { describe, expect, test, vi } from 'vitest'
import type { WindowState } from '#shared/bridge/bridge.ts'
import type { MenuActs } from '../../../src-main/main/menuTemplate.ts'
import { menuTemplate } from '../../../src-main/main/menuTemplate.ts'

const state: WindowState = { name: 'Bass', dirty: true, undo: 'Rename', redo: null, hasWorkbook: true }

const acts = (): MenuActs => ({ command: vi.fn(), openRecent: vi.fn(), clearRecent: vi.fn() })

function itemsOn(platform: NodeJS.Platform, shown = state, done = acts()): MenuItemConstructorOptions[] {
  const recent = [{ id: 'r1', name: 'R&D.ferrule', place: '~/horns' }]
  const flat = (items: readonly MenuItemConstructorOptions[]): MenuItemConstructorOptions[] =>
    items.flatMap((item) => [item, ...(Array.isArray(item.submenu) ? flat(item.submenu) : [])])
  return flat(menuTemplate({ state: shown, recent, platform }, done))
}

const itemOn = (platform: NodeJS.Platform, id: string) => itemsOn(platform).find((item) => item.id === id)

describe('The menu', () => {
  test('has an id for every item but the separators, each once', () => {
    for (const platform of ['linux', 'win32', 'darwin'] as const) {
      const ids = itemsOn(platform)
        .filter((item) => item.type !== 'separator')
        .map((item) => item.id)
      expect(ids).not.toContain(undefined)
      expect(new Set(ids).size).toBe(ids.length)
    }
  })

  test('redoes with the keys of its platform', () => {
    expect(itemOn('win32', 'redo')?.accelerator).toBe('CmdOrCtrl+Y')
    expect(itemOn('linux', 'redo')?.accelerator).toBe('CmdOrCtrl+Shift+Z')
    expect(itemOn('darwin', 'redo')?.accelerator).toBe('CmdOrCtrl+Shift+Z')
  })

  test('gives no keys twice', () => {
    const keys = itemsOn('linux').flatMap((item) => item.accelerator ?? [])
    expect(keys.length).toBeGreaterThan(5)
    expect(new Set(keys).size).toBe(keys.length)
  })

  test('quits from the File menu except on a Mac, where the program’s own menu does', () => {
    expect(itemOn('linux', 'quit')?.role).toBe('quit')
    expect(itemOn('darwin', 'quit')).toBeUndefined()
    expect(itemOn('darwin', 'program')?.role).toBe('appMenu')
  })

  test('names the step to undo, with an ampersand that stays one', () => {
    const shown = { ...state, undo: 'Rename “B & E♭”' }
    expect(itemsOn('linux', shown).find((item) => item.id === 'undo')?.label).toBe('Undo “Rename “B && E♭””')
  })

  test('finds from the Edit menu, without a workbook too', () => {
    const edit = itemsOn('linux', { ...state, hasWorkbook: false }).find((item) => item.id === 'edit')
    const items = (edit?.submenu ?? []) as MenuItemConstructorOptions[]
    const find = items.find((item) => item.id === 'palette')
    expect(find).toMatchObject({ label: 'Find…', enabled: true, accelerator: 'CmdOrCtrl+K' })
    const settings = items.find((item) => item.id === 'settings')
    expect(settings).toMatchObject({ label: 'Settings…', enabled: true })
  })

  test('has nothing to save or print without a workbook', () => {
    const shown = { ...state, hasWorkbook: false }
    for (const id of ['save', 'saveAs', 'report', 'print', 'pdf', 'startPage']) {
      expect(itemsOn('linux', shown).find((item) => item.id === id)?.enabled).toBe(false)
    }
  })

  test('asks the window by the id of the item', () => {
    const done = acts()
    const items = itemsOn('linux', state, done)
    for (const id of ['saveAs', 'recent-r1', 'clearRecent']) {
      const click = items.find((item) => item.id === id)?.click as () => void
      click()
    }
    expect(done.command).toHaveBeenCalledWith('saveAs')
    expect(done.openRecent).toHaveBeenCalledWith('r1')
    expect(done.clearRecent).toHaveBeenCalledOnce()
  })

  test('says so when there are no recent files', () => {
    const template = menuTemplate({ state, recent: [], platform: 'linux' }, acts())
    expect(JSON.stringify(template)).toContain('No recent files')
    expect(JSON.stringify(template)).not.toContain('clearRecent')
  })
})
