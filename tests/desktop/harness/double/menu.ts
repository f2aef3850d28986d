import type { MenuItemConstructorOptions } from 'electron'
import { app } from './app.ts'
import { BrowserWindow } from './browserWindow.ts'
import { record } from './control.ts'

/** What an item does by its role, where the tests use it. */
const roles: Readonly<Record<string, () => void>> = {
  close: () => BrowserWindow.getAllWindows()[0]?.close(),
  quit: () => app.quit(),
}

class MenuItem {
  readonly id: string | undefined
  readonly label: string
  readonly accelerator: string | undefined
  readonly enabled: boolean
  readonly type: string
  readonly submenu: Menu | undefined
  readonly click: () => void

  constructor({ id, label, role, accelerator, enabled, type, submenu, click }: MenuItemConstructorOptions) {
    this.id = id
    this.label = label ?? role ?? ''
    this.accelerator = accelerator
    this.enabled = enabled ?? true
    this.type = type ?? (submenu === undefined ? 'normal' : 'submenu')
    this.submenu = Array.isArray(submenu) ? Menu.buildFromTemplate(submenu) : undefined
    this.click = () => {
      if (click !== undefined) (click as () => void)()
      else (roles[role ?? ''] ?? (() => record('role', role)))()
    }
  }
}

export class Menu {
  private static shown: Menu | null = null
  readonly items: MenuItem[] = []

  static buildFromTemplate(template: readonly MenuItemConstructorOptions[]): Menu {
    const menu = new Menu()
    menu.items.push(...template.map((options) => new MenuItem(options)))
    return menu
  }
  static setApplicationMenu(menu: Menu | null): void {
    Menu.shown = menu
  }
  static getApplicationMenu(): Menu | null {
    return Menu.shown
  }
  getMenuItemById(id: string): MenuItem | null {
    for (const item of this.items) {
      const found = item.id === id ? item : item.submenu?.getMenuItemById(id)
      if (found) return found
    }
    return null
  }
}
