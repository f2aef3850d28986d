import { EventEmitter } from 'node:events'
import type { BrowserWindowConstructorOptions } from 'electron'
import { inChromium } from './addresses.ts'
import { app } from './app.ts'
import { control, preventable, record } from './control.ts'
import { preparePage } from './page.ts'
import { WebContents } from './webContents.ts'

interface Bounds {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

export class BrowserWindow extends EventEmitter {
  private static readonly open: BrowserWindow[] = []
  readonly webContents: WebContents
  private readonly bounds: Bounds
  private title: string
  private representedFile = ''
  private isEdited = false
  private isGone = false
  private isShown: boolean
  private isLarge = false
  private readonly prepared: Promise<void>

  constructor(options: BrowserWindowConstructorOptions) {
    super()
    if (!control.isReady) throw new Error('A window can be made only once the program is ready.')
    const { x = 0, y = 0, width = 800, height = 600 } = options
    this.bounds = { x, y, width, height }
    this.title = options.title ?? ''
    this.isShown = options.show ?? true
    this.webContents = new WebContents(options.webPreferences ?? {})
    BrowserWindow.open.push(this)
    this.prepared = preparePage(this.webContents, options.webPreferences?.preload, this.bounds)
    this.prepared.then(() => this.webContents.page?.once('close', () => this.gone())).catch(() => undefined)
  }

  static getAllWindows(): BrowserWindow[] {
    return [...BrowserWindow.open]
  }

  async loadURL(url: string): Promise<void> {
    await this.prepared
    await this.webContents.page?.goto(inChromium(url), { waitUntil: 'load' })
    this.emit('ready-to-show')
  }
  close(): void {
    const { event, isPrevented } = preventable({})
    this.emit('close', event)
    if (!isPrevented()) this.destroy()
  }
  destroy(): void {
    void this.webContents.page?.close().catch(() => undefined)
    this.gone()
  }
  private gone(): void {
    if (this.isGone) return
    this.isGone = true
    BrowserWindow.open.splice(BrowserWindow.open.indexOf(this), 1)
    this.emit('closed')
    if (BrowserWindow.open.length === 0) app.emit('window-all-closed')
  }

  isDestroyed = (): boolean => this.isGone
  show(): void {
    this.isShown = true
  }
  isVisible = (): boolean => this.isShown
  focus(): void {
    record('focus')
  }
  isMinimized = (): boolean => false
  restore(): void {}
  maximize(): void {
    this.isLarge = true
  }
  isMaximized = (): boolean => this.isLarge
  getNormalBounds = (): Bounds => ({ ...this.bounds })
  setTitle(title: string): void {
    this.title = title
  }
  getTitle = (): string => this.title
  setDocumentEdited(isEdited: boolean): void {
    this.isEdited = isEdited
  }
  isDocumentEdited = (): boolean => this.isEdited
  setRepresentedFilename(path: string): void {
    this.representedFile = path
  }
  getRepresentedFilename = (): string => this.representedFile
}
