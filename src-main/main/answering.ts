import type { IpcMain, IpcMainInvokeEvent, WebContents } from 'electron'
import type { Bridge } from '#shared/bridge/bridge.ts'
import type { Question } from '../channels/channels.ts'
import { questionChannel } from '../channels/channels.ts'
import { payloads } from '../channels/payloads.ts'

/** The bridge's questions as the main process answers them. */
export type Answers = { readonly [Q in Question]: Bridge[Q] }

export interface Asker {
  readonly contents: WebContents
  isOwnPage(url: string): boolean
}

/** Answers every question, of the window's own page and well formed; any other is refused with an error. */
export function answerQuestions(ipcMain: IpcMain, asker: Asker, answers: Answers): void {
  for (const question of Object.keys(payloads) as Question[]) {
    ipcMain.handle(questionChannel(question), async (event, ...payload: unknown[]) => {
      if (!isFromWindow(event, asker))
        throw new Error(`“${question}” was asked by a page that is not the window.`)
      const found = payloads[question].safeParse(payload)
      if (!found.success) throw new Error(`“${question}” was asked with a payload of the wrong shape.`)
      const answer = answers[question] as (...given: readonly unknown[]) => Promise<unknown>
      return answer(...found.data)
    })
  }
}

/** The frame is gone when the page navigated since it asked; an embedded frame is never the window's page. */
function isFromWindow(event: IpcMainInvokeEvent, asker: Asker): boolean {
  const frame = event.senderFrame
  if (frame === null || event.sender !== asker.contents) return false
  return frame.parent === null && asker.isOwnPage(frame.url)
}
