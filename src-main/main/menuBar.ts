import { Menu } from 'electron'
import type { RecentWorkbook, WindowState } from '#shared/bridge/bridge.ts'
import type { RecentList } from '../files/recentList.ts'
import type { MenuActs } from './menuTemplate.ts'
import { menuTemplate } from './menuTemplate.ts'
import { emptyState } from './standing.ts'

export interface MenuBar {
  showState(state: WindowState): void
  /** Looks again which recent files are there. */
  refreshRecent(): Promise<void>
}

/** The native menu bar, built anew whenever something that it shows has changed. */
export function menuBar(recent: RecentList, acts: MenuActs): MenuBar {
  let state = emptyState
  let files: readonly RecentWorkbook[] = []
  let shown = ''

  function show(): void {
    const { undo, redo, hasWorkbook } = state
    const now = JSON.stringify([undo, redo, hasWorkbook, files])
    if (now === shown) return
    shown = now
    const template = menuTemplate({ state, recent: files, platform: process.platform }, acts)
    Menu.setApplicationMenu(Menu.buildFromTemplate(template))
  }

  return {
    showState: (next) => {
      state = next
      show()
    },
    refreshRecent: async () => {
      files = await recent.list()
      show()
    },
  }
}
