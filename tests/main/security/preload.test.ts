import { beforeAll, describe, expect, test, vi } from 'vitest'

const electron = vi.hoisted(() => ({
  exposed: [] as [string, Record<string, unknown>][],
  invoked: [] as unknown[][],
  listeners: new Map<string, (event: unknown, ...said: unknown[]) => void>(),
}))

vi.mock('electron', () => ({
  contextBridge: {
    exposeInMainWorld: (name: string, value: Record<string, unknown>) => electron.exposed.push([name, value]),
  },
  ipcRenderer: {
    invoke: async (...given: unknown[]) => void electron.invoked.push(given),
    on: (channel: string, listener: () => void) => electron.listeners.set(channel, listener),
    off: () => undefined,
  },
}))

const questions = [
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
]

describe('What the preload gives to the page', () => {
  let bridge: Record<string, unknown> = {}
  beforeAll(async () => {
    await import('../../../src-main/preload/index.ts')
    bridge = electron.exposed[0]?.[1] ?? {}
  })

  test('is one object with exactly these members', () => {
    expect(electron.exposed.map(([name]) => name)).toEqual(['ferrule'])
    expect(Object.keys(bridge).sort()).toEqual(
      [...questions, 'form', 'onClosing', 'onCommand', 'onFile', 'onFileChanged'].sort(),
    )
  })

  test('asks each question on a channel of its own, never on one that the page names', async () => {
    for (const question of questions) {
      electron.invoked.length = 0
      await (bridge[question] as (...given: unknown[]) => Promise<unknown>)('given', 'ferrule:other')
      expect(electron.invoked[0]?.[0]).toBe(`ferrule:${question}`)
      expect(electron.invoked).toHaveLength(1)
    }
  })

  test('passes on what was said and not the event, which would lead to the channels', () => {
    const heard: unknown[][] = []
    for (const [member, channel] of [
      ['onCommand', 'ferrule:notice:command'],
      ['onClosing', 'ferrule:notice:closing'],
      ['onFileChanged', 'ferrule:notice:fileChanged'],
      ['onFile', 'ferrule:notice:file'],
    ] as const) {
      ;(bridge[member] as (listener: (...given: unknown[]) => void) => void)((...given) => heard.push(given))
      electron.listeners.get(channel)?.({ sender: 'the channels' }, `said on ${member}`)
    }
    expect(heard).toEqual([
      ['said on onCommand'],
      ['said on onClosing'],
      ['said on onFileChanged'],
      ['said on onFile'],
    ])
  })
})
