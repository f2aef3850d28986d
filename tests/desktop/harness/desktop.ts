import type * as Electron from 'electron'
import type { Page } from 'playwright-core'
import type { Control } from './double/control.ts'

export type ElectronModule = typeof Electron

export type DialogName = 'showOpenDialog' | 'showSaveDialog' | 'showMessageBox'

export interface AskedDialog {
  readonly dialog: DialogName
  readonly options: {
    readonly message?: string
    readonly buttons?: readonly string[]
    readonly defaultPath?: string
  }
}

export interface MenuNode {
  readonly id: string
  readonly label: string
  readonly enabled: boolean
  readonly accelerator: string | null
  readonly items: readonly MenuNode[]
}

export interface LaunchOptions {
  /** The user's data; a new folder when absent. Give the same one again to start the program again. */
  readonly userData?: string
  /** Files on the command line. */
  readonly files?: readonly string[]
  /** Leaves the page empty, so that nothing but the test uses the bridge. Only in the double. */
  readonly bare?: boolean
}

/** The program in its desktop form while a test runs it. */
export interface Desktop {
  readonly userData: string
  /** The window, with its page loaded. */
  readonly page: Page
  /** Errors of the page, uncaught or on its console; a refusal by its security policy is one of them. */
  readonly complaints: readonly string[]
  /** Resolves with the exit code once the program has ended; `null` when it was killed. */
  readonly ended: Promise<number | null>
  /** The next file question is answered with this path; `null` cancels it. */
  answerFile(dialog: 'showOpenDialog' | 'showSaveDialog', path: string | null): Promise<void>
  /** The next message box is answered with the button of this label. */
  answerMessage(button: string): Promise<void>
  /** Every dialog so far, oldest first. */
  askedDialogs(): Promise<readonly AskedDialog[]>
  /** Chooses a menu item; throws when there is none of this id, or it stays disabled. */
  chooseMenu(id: string): Promise<void>
  menu(): Promise<readonly MenuNode[]>
  title(): Promise<string>
  /** What the close button of the window does. */
  pressClose(): Promise<void>
  /** Runs a function in the main process. It must stand alone: nothing around it is there. */
  inMain<Given, Value>(
    act: (electron: ElectronModule & { control: Control }, given: Given) => Value | Promise<Value>,
    given: Given,
  ): Promise<Value>
  /** Ends the program at once, as a power cut would. */
  kill(): Promise<void>
}

/** Starts the program in one of the ways to run it. */
export type Launch = (options?: LaunchOptions) => Promise<Desktop>
