/** Stands in for Electron's main-process module: as much of it as the program uses, over a Chromium. */
import { record } from './control.ts'

export { app } from './app.ts'
export { BrowserWindow } from './browserWindow.ts'
export { control } from './control.ts'
export { ipcMain } from './ipc.ts'
export { Menu } from './menu.ts'
export { protocol } from './protocol.ts'
export { session } from './session.ts'

const unscripted = (question: string) => async (): Promise<never> => {
  record('unscripted question', question)
  throw new Error(`The test has no answer for ${question}.`)
}

export const dialog = {
  showOpenDialog: unscripted('showOpenDialog'),
  showSaveDialog: unscripted('showSaveDialog'),
  showMessageBox: unscripted('showMessageBox'),
}

const display = { id: 1, workArea: { x: 0, y: 0, width: 1920, height: 1080 } }

export const screen = {
  getPrimaryDisplay: () => display,
  getAllDisplays: () => [display],
}
