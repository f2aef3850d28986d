import type { IpcMain, WebContents } from 'electron'
import { describe, expect, test } from 'vitest'
import type { Answers } from '../../../src-main/main/answering.ts'
import { answerQuestions } from '../../../src-main/main/answering.ts'

type Handler = (event: object, ...payload: unknown[]) => Promise<unknown>

const contents = { id: 1 } as unknown as WebContents
const page = { url: 'app://ferrule/index.html', parent: null }
const draft = { name: 'Bass', text: '{}', keptAt: 1, fileName: null }

/** Every channel that the main process answers, with what was asked through it. */
function answering(): { readonly handlers: ReadonlyMap<string, Handler>; readonly asked: unknown[][] } {
  const handlers = new Map<string, Handler>()
  const asked: unknown[][] = []
  const ipcMain = { handle: (channel: string, handler: Handler) => void handlers.set(channel, handler) }
  const answers = new Proxy({} as Answers, {
    get:
      (_answers, question) =>
      async (...payload: unknown[]) =>
        void asked.push([question, ...payload]),
  })
  const isOwnPage = (url: string): boolean => url.startsWith('app://ferrule/')
  answerQuestions(ipcMain as unknown as IpcMain, { contents, isOwnPage }, answers)
  return { handlers, asked }
}

const ask = (handlers: ReadonlyMap<string, Handler>, event: object, ...payload: unknown[]) =>
  handlers.get('ferrule:keepDraft')!(event, ...payload)

describe('The main process', () => {
  test('answers exactly these questions', () => {
    expect([...answering().handlers.keys()].sort()).toEqual(
      [
        'adoptFile',
        'clearRecent',
        'closeWindow',
        'exportFile',
        'forgetDraft',
        'keepDraft',
        'leftDrafts',
        'openDraftFile',
        'openRecent',
        'openWorkbook',
        'print',
        'readCurrentFile',
        'recentWorkbooks',
        'releaseFile',
        'saveWorkbook',
        'saveWorkbookAs',
        'showState',
      ].map((question) => `ferrule:${question}`),
    )
  })

  test('answers the window’s own page', async () => {
    const { handlers, asked } = answering()
    await ask(handlers, { sender: contents, senderFrame: page }, draft)
    expect(asked).toEqual([['keepDraft', draft]])
  })

  const strangers: readonly (readonly [string, object])[] = [
    ['a frame that is gone', { sender: contents, senderFrame: null }],
    ['other contents', { sender: { id: 2 }, senderFrame: page }],
    ['another page', { sender: contents, senderFrame: { url: 'https://example.com/', parent: null } }],
    [
      'a page whose address only begins alike',
      { sender: contents, senderFrame: { url: 'app://ferrule.evil/', parent: null } },
    ],
    ['an embedded frame of its own address', { sender: contents, senderFrame: { ...page, parent: page } }],
  ]
  for (const [who, event] of strangers) {
    test(`refuses ${who}`, async () => {
      const { handlers, asked } = answering()
      await expect(ask(handlers, event, draft)).rejects.toThrow('not the window')
      expect(asked).toEqual([])
    })
  }

  const payloads: readonly (readonly [string, readonly unknown[]])[] = [
    ['too little', []],
    ['too much', [draft, draft]],
    ['another kind of value', ['/etc/passwd']],
    ['a key that is not known', [{ ...draft, path: '/etc/passwd' }]],
    ['a number that is none', [{ ...draft, keptAt: Number.NaN }]],
    ['more text than any workbook has', [{ ...draft, text: 'x'.repeat(64 * 1024 * 1024 + 1) }]],
  ]
  for (const [what, payload] of payloads) {
    test(`refuses ${what}`, async () => {
      const { handlers, asked } = answering()
      await expect(ask(handlers, { sender: contents, senderFrame: page }, ...payload)).rejects.toThrow(
        'wrong shape',
      )
      expect(asked).toEqual([])
    })
  }
})
