import type { Bridge } from '#shared/bridge/bridge.ts'

/** The bridge's questions, each answered by the main process on a channel of its own. */
export type Question = Exclude<keyof Bridge, 'form' | 'onCommand' | 'onClosing' | 'onFile' | 'onFileChanged'>

/** What the main process tells the window unasked. */
export type Notice = 'command' | 'closing' | 'file' | 'fileChanged'

export const questionChannel = (question: Question): string => `ferrule:${question}`
export const noticeChannel = (notice: Notice): string => `ferrule:notice:${notice}`
