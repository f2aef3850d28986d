import { EventEmitter } from 'node:events'
import { join } from 'node:path'
import { BrowserWindow } from './browserWindow.ts'
import { control, preventable } from './control.ts'

class App extends EventEmitter {
  readonly isPackaged = false
  private becomeReady: () => void = () => undefined
  private readonly ready = new Promise<void>((resolve) => {
    this.becomeReady = resolve
  })

  setName(): void {}
  enableSandbox(): void {
    if (control.isReady) throw new Error('The sandbox must be switched on before the program is ready.')
    control.isSandboxed = true
  }
  whenReady(): Promise<void> {
    return this.ready
  }
  goReady(): void {
    control.isReady = true
    this.becomeReady()
  }
  requestSingleInstanceLock(): boolean {
    return !control.options.lockIsTaken
  }
  getPath(name: string): string {
    return name === 'userData' ? control.options.userData : join(control.options.userData, name)
  }

  quit(): void {
    const windows = BrowserWindow.getAllWindows()
    this.emit('before-quit', preventable({}).event)
    for (const window of windows) window.close()
    if (windows.length === 0) this.exit(0)
  }
  exit(code: number): void {
    if (control.exitCode !== null) return
    control.exitCode = code
    this.emit('will-quit', preventable({}).event)
    // The answers on their way to the tests go out first.
    setImmediate(() => process.exit(code))
  }
}

export const app = new App()
