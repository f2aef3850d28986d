import { beforeAll, describe, expect, test, vi } from 'vitest'
import type { PlaceStore } from '../../../src-main/main/windowPlace.ts'

const electron = vi.hoisted(() => ({ steps: [] as string[], windows: [] as Record<string, unknown>[] }))

vi.mock('electron', () => {
  const step = (name: string) => () => {
    electron.steps.push(name)
  }
  const area = { x: 0, y: 0, width: 1920, height: 1080 }
  return {
    app: {
      isPackaged: true,
      setName: () => undefined,
      enableSandbox: step('enableSandbox'),
      requestSingleInstanceLock: () => true,
      on: (event: string) => electron.steps.push(`app.on ${event}`),
      quit: () => undefined,
      whenReady: async () => step('ready')(),
    },
    protocol: {
      registerSchemesAsPrivileged: (schemes: unknown) =>
        electron.steps.push(`scheme ${JSON.stringify(schemes)}`),
      handle: (scheme: string) => electron.steps.push(`handle ${scheme}`),
    },
    session: {
      defaultSession: {
        setPermissionRequestHandler: step('permission requests'),
        setPermissionCheckHandler: step('permission checks'),
        setDevicePermissionHandler: step('device permissions'),
        setDisplayMediaRequestHandler: step('display media'),
        webRequest: { onBeforeRequest: step('network') },
      },
    },
    screen: {
      getPrimaryDisplay: () => ({ id: 1, workArea: area }),
      getAllDisplays: () => [{ id: 1, workArea: area }],
    },
    BrowserWindow: class {
      constructor(options: Record<string, unknown>) {
        electron.windows.push(options)
      }
      once(): void {}
      on(): void {}
    },
  }
})
vi.mock('../../../src-main/serving/ownFiles.ts', () => ({ ownFilesIn: () => new Map() }))
vi.mock('../../../src-main/main/program.ts', () => ({
  startProgram: async () => {
    electron.steps.push('window')
    return { arrive: async () => undefined, bringForward: () => undefined }
  },
}))

describe('The program as it starts', () => {
  beforeAll(async () => {
    vi.stubGlobal('DEVELOPMENT', false)
    await import('../../../src-main/main/index.ts')
    await vi.waitFor(() => expect(electron.steps).toContain('window'))
  })
  const at = (name: string): number => electron.steps.findIndex((step) => step.startsWith(name))

  test('switches the sandbox on for every process before it is ready', () => {
    expect(at('enableSandbox')).toBeGreaterThanOrEqual(0)
    expect(at('enableSandbox')).toBeLessThan(at('ready'))
  })

  test('confines pages before any can be made', () => {
    expect(at('app.on web-contents-created')).toBeGreaterThanOrEqual(0)
    expect(at('app.on web-contents-created')).toBeLessThan(at('ready'))
  })

  test('shows its page by a secure scheme of its own that cannot get round the policy', () => {
    const privileges = { standard: true, secure: true, supportFetchAPI: true, codeCache: true }
    expect(electron.steps).toContain(`scheme ${JSON.stringify([{ scheme: 'app', privileges }])}`)
    expect(at('handle app')).toBeLessThan(at('window'))
    expect(at('handle app')).toBeGreaterThan(at('ready'))
  })

  test('refuses permissions and the network before there is a window', () => {
    for (const name of [
      'permission requests',
      'permission checks',
      'device permissions',
      'display media',
      'network',
    ]) {
      expect([name, at(name) >= 0]).toEqual([name, true])
      expect([name, at(name) < at('window')]).toEqual([name, true])
    }
  })

  test('makes its window of a confined page', async () => {
    const { createWindow } = await import('../../../src-main/main/mainWindow.ts')
    const { confinedPage } = await import('../../../src-main/main/lockdown.ts')
    await createWindow({ read: async () => null, keep: async () => undefined } as unknown as PlaceStore)
    const found = electron.windows[0]?.webPreferences as { preload: string }
    expect(found).toEqual(confinedPage(found.preload))
    expect(found.preload).toMatch(/preload[\\/]index\.cjs$/)
  })

  test('knows its own page, and no address that only looks like it', async () => {
    const { isOwnAddress, isOwnPage, ownPage } = await import('../../../src-main/main/addresses.ts')
    expect(ownPage).toBe('app://ferrule/index.html')
    expect(isOwnPage(ownPage)).toBe(true)
    for (const url of [
      'app://ferrule.evil/',
      'app://other/',
      'file:///index.html',
      'http://app://ferrule/',
      '',
    ]) {
      expect([url, isOwnPage(url), isOwnAddress(url)]).toEqual([url, false, false])
    }
  })
})
