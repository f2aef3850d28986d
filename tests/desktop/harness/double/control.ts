import type { BrowserContext } from 'playwright-core'

/** What a launch asks of the double. */
export interface DoubleOptions {
  readonly userData: string
  readonly cdpPort: number
  /** What follows the program's folder on the command line. */
  readonly args: readonly string[]
  /** Another start of the program is running already. */
  readonly lockIsTaken: boolean
  /** The page is left empty, so that nothing but the test uses the bridge. */
  readonly pageIsBare: boolean
}

/** What was asked of the system and has no effect in the double. */
export interface Asked {
  readonly what: string
  readonly details: readonly unknown[]
}

/** The state that the parts of the double share, and that tests may look into. */
export interface Control {
  options: DoubleOptions
  context: BrowserContext | null
  isReady: boolean
  isSandboxed: boolean
  exitCode: number | null
  readonly asked: Asked[]
  /** Gives a question to the main process as if the frame had asked it. */
  askFrom(frame: ForgedFrame, channel: string, ...payload: unknown[]): Promise<unknown>
}

/** A frame that only claims to exist; `null` parent for a page's main frame. */
export interface ForgedFrame {
  readonly url: string
  readonly isEmbedded: boolean
}

export const control: Control = {
  options: { userData: '', cdpPort: 0, args: [], lockIsTaken: false, pageIsBare: false },
  context: null,
  isReady: false,
  isSandboxed: false,
  exitCode: null,
  asked: [],
  askFrom: () => Promise.reject(new Error('There is no window yet.')),
}

export function record(what: string, ...details: unknown[]): void {
  control.asked.push({ what, details })
}

/** What crosses between processes is copied; what cannot be copied cannot cross. */
export function copied<Value>(value: Value, where: string): Value {
  try {
    return structuredClone(value)
  } catch {
    throw new Error(`An object could not be cloned (${where}).`)
  }
}

/** An event whose default a listener may prevent. */
export function preventable<More extends object>(more: More) {
  let prevented = false
  const event = {
    ...more,
    preventDefault: () => {
      prevented = true
    },
  }
  return { event, isPrevented: () => prevented }
}
