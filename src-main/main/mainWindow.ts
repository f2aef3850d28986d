import { join } from 'node:path'
import { BrowserWindow, screen } from 'electron'
import type { WindowState } from '#shared/bridge/bridge.ts'
import { confinedPage } from './lockdown.ts'
import type { Area, PlaceStore } from './windowPlace.ts'
import { leastHeight, leastWidth, placeOn } from './windowPlace.ts'
import { words } from './words.ts'

/** Makes the one window, where it last was; it shows itself once there is something to see. */
export async function createWindow(places: PlaceStore): Promise<BrowserWindow> {
  const { maximized, ...area } = placeOn(workAreas(), await places.read())
  const window = new BrowserWindow({
    ...area,
    minWidth: Math.min(leastWidth, area.width),
    minHeight: Math.min(leastHeight, area.height),
    title: words.program,
    show: false,
    webPreferences: confinedPage(join(import.meta.dirname, '../preload/index.cjs')),
  })
  if (maximized) window.maximize()
  window.once('ready-to-show', () => window.show())
  window.on('page-title-updated', (event) => event.preventDefault())
  return window
}

function workAreas(): readonly [Area, ...Area[]] {
  const first = screen.getPrimaryDisplay()
  const others = screen.getAllDisplays().filter((display) => display.id !== first.id)
  return [first.workArea, ...others.map((display) => display.workArea)]
}

export async function keepPlace(window: BrowserWindow, places: PlaceStore): Promise<void> {
  const { x, y, width, height } = window.getNormalBounds()
  await places.keep({ x, y, width, height, maximized: window.isMaximized() })
}

/** The title bar: the workbook's name, whether it is saved, and which file it is. */
export function showTitle(window: BrowserWindow, state: WindowState, path: string | null): void {
  const mark = state.dirty ? '• ' : ''
  window.setTitle(state.hasWorkbook ? `${mark}${state.name} – ${words.program}` : words.program)
  window.setDocumentEdited(state.dirty)
  window.setRepresentedFilename(path ?? '')
}
