import type { Bridge } from '#shared/bridge/bridge.ts'
import { browserBridge } from './browser.ts'

declare global {
  interface Window {
    /** Put there by the preload, in the desktop form only. */
    readonly ferrule?: Bridge
  }
}

/** The bridge in force: the desktop's where the preload put one, else the browser's own. */
export const bridge: Bridge = window.ferrule ?? browserBridge()
