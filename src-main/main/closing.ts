import type { BrowserWindow } from 'electron'

export interface ClosingActs {
  isDirty(): Promise<boolean>
  keepChanges(): Promise<'save' | 'discard' | 'cancel'>
  /** Asks the window to save and then to close; it does not when saving fails or is cancelled. */
  saveThenClose(): void
  /** Last things before the window goes: nothing of it is wanted any more. */
  tidy(): Promise<void>
}

/** Closes at once, without a question. */
export type CloseNow = () => Promise<void>

/** Stands between the close button and the loss of work. */
export function guardClosing(window: BrowserWindow, acts: ClosingActs): CloseNow {
  let asking = false

  async function closeNow(): Promise<void> {
    await acts.tidy()
    if (!window.isDestroyed()) window.destroy()
  }

  async function decide(): Promise<void> {
    const choice = (await acts.isDirty()) ? await acts.keepChanges() : 'discard'
    if (choice === 'discard') return closeNow()
    if (choice === 'save') acts.saveThenClose()
  }

  window.on('close', (event) => {
    event.preventDefault()
    if (asking) return
    asking = true
    void decide().finally(() => {
      asking = false
    })
  })
  return closeNow
}
