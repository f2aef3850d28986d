import { EventEmitter } from 'node:events'
import type { App, Session, WebContents } from 'electron'
import { describe, expect, test } from 'vitest'
import {
  confinedPage,
  confinePages,
  refuseNetwork,
  refusePermissions,
} from '../../../src-main/main/lockdown.ts'

type OpenHandler = (details: { url: string }) => { action: string }

class Contents extends EventEmitter {
  open: OpenHandler = () => ({ action: 'allow' })
  setWindowOpenHandler(handler: OpenHandler): void {
    this.open = handler
  }
}

const isOwnPage = (url: string): boolean => url.startsWith('app://ferrule/')

/** A page as every page of the program is made. */
function confined(): Contents {
  const app = new EventEmitter()
  confinePages(app as unknown as App, isOwnPage)
  const contents = new Contents()
  app.emit('web-contents-created', {}, contents as unknown as WebContents)
  return contents
}

function isPrevented(contents: Contents, event: string, url: string): boolean {
  let prevented = false
  contents.emit(event, { url, preventDefault: () => (prevented = true) })
  return prevented
}

describe('A page', () => {
  test('has exactly these preferences: sandboxed, isolated, without Node, webviews or experiments', () => {
    expect(confinedPage('/preload.cjs')).toEqual({
      preload: '/preload.cjs',
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    })
  })

  test('is not led elsewhere, itself or a frame of it, and stays free to reload', () => {
    const contents = confined()
    for (const event of ['will-navigate', 'will-frame-navigate']) {
      expect([event, isPrevented(contents, event, 'https://example.com/')]).toEqual([event, true])
      expect([event, isPrevented(contents, event, 'file:///etc/passwd')]).toEqual([event, true])
      expect([event, isPrevented(contents, event, 'app://ferrule/index.html')]).toEqual([event, false])
    }
  })

  test('is not redirected, not even to itself', () => {
    expect(isPrevented(confined(), 'will-redirect', 'app://ferrule/index.html')).toBe(true)
  })

  test('opens no other window, not even of its own page', () => {
    expect(confined().open({ url: 'app://ferrule/index.html' })).toEqual({ action: 'deny' })
  })

  test('embeds no other page', () => {
    expect(isPrevented(confined(), 'will-attach-webview', 'app://ferrule/index.html')).toBe(true)
  })
})

describe('Permissions', () => {
  type Decide = (answer: unknown) => void
  interface Handlers {
    request?: (contents: null, permission: string, decide: Decide) => void
    check?: (contents: null, permission: string) => boolean
    device?: () => boolean
    media?: (request: null, decide: Decide) => void
  }

  function refusing(): Handlers {
    const handlers: Handlers = {}
    refusePermissions({
      setPermissionRequestHandler: (handler: Handlers['request']) =>
        Object.assign(handlers, { request: handler }),
      setPermissionCheckHandler: (handler: Handlers['check']) => Object.assign(handlers, { check: handler }),
      setDevicePermissionHandler: (handler: Handlers['device']) =>
        Object.assign(handlers, { device: handler }),
      setDisplayMediaRequestHandler: (handler: Handlers['media']) =>
        Object.assign(handlers, { media: handler }),
    } as unknown as Session)
    return handlers
  }

  test('are refused when they are asked for and when they are looked up', () => {
    const { request, check } = refusing()
    for (const permission of [
      'media',
      'geolocation',
      'notifications',
      'midi',
      'fullscreen',
      'openExternal',
    ]) {
      const answers: unknown[] = []
      request?.(null, permission, (answer) => answers.push(answer))
      answers.push(check?.(null, permission))
      expect([permission, ...answers]).toEqual([permission, false, false])
    }
  })

  test('for devices and for the screen are refused too', () => {
    const { device, media } = refusing()
    expect(device?.()).toBe(false)
    const answers: unknown[] = []
    media?.(null, (answer) => answers.push(answer))
    expect(answers).toEqual([{}])
  })
})

describe('The network', () => {
  test('is not reached: what is not the program’s own is cancelled', () => {
    type Filter = (details: { url: string }, decide: (answer: { cancel: boolean }) => void) => void
    let filter: Filter | undefined
    const webRequest = {
      onBeforeRequest: (given: Filter) => {
        filter = given
      },
    }
    refuseNetwork({ webRequest } as unknown as Session, isOwnPage)
    const cancelled: boolean[] = []
    for (const url of ['https://example.com/', 'http://127.0.0.1/', 'ws://x/', 'app://ferrule/main.js'])
      filter?.({ url }, ({ cancel }) => cancelled.push(cancel))
    expect(cancelled).toEqual([true, true, true, false])
  })
})
