import { readFile } from 'node:fs/promises'
import { expect } from 'vitest'
import { inDouble, onDesktops } from './harness/onDesktops.ts'

onDesktops('The page is locked down', (test) => {
  test('it runs in the sandbox, apart from Node and from the preload', async ({ desktop: { inMain } }) => {
    const preferences = await inMain(({ BrowserWindow }) => {
      const contents = BrowserWindow.getAllWindows()[0]?.webContents as unknown as {
        getLastWebPreferences(): Record<string, unknown>
      }
      const found = contents.getLastWebPreferences()
      return Object.fromEntries(
        [
          'sandbox',
          'contextIsolation',
          'nodeIntegration',
          'nodeIntegrationInWorker',
          'nodeIntegrationInSubFrames',
          'webSecurity',
          'allowRunningInsecureContent',
          'experimentalFeatures',
          'webviewTag',
        ].map((name) => [name, found[name]]),
      )
    }, null)
    expect(preferences).toEqual({
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
    })
  })

  test('its security policy comes with the page', async ({ desktop: { page } }) => {
    const policy = await page.evaluate(async () => {
      const response = await fetch(location.href)
      return response.headers.get('Content-Security-Policy')
    })
    expect(policy).toMatch(
      /^default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self' 'sha256-/,
    )
    expect(policy).toContain("frame-ancestors 'none'")
    expect(policy).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|\*/)
  })

  test('code made from text does not run', async ({ desktop: { page } }) => {
    const outcome = await page.evaluate(
      () =>
        new Promise((resolve) => {
          // The driver's own evaluation is not bound by the policy; a timer of the page is.
          setTimeout(() => {
            try {
              resolve(new Function('return "ran"')())
            } catch (error) {
              resolve((error as Error).name)
            }
          })
        }),
    )
    expect(outcome).toBe('EvalError')
  })

  test('WebAssembly does run', async ({ desktop: { page } }) => {
    const outcome = await page.evaluate(
      () =>
        new Promise((resolve) => {
          const empty = new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0])
          setTimeout(() =>
            WebAssembly.compile(empty).then(
              () => resolve('compiled'),
              (error: Error) => resolve(error.name),
            ),
          )
        }),
    )
    expect(outcome).toBe('compiled')
  })

  test('a script or style written into the page is refused', async ({ desktop: { page, complaints } }) => {
    const colour = await page.evaluate(async () => {
      const script = document.createElement('script')
      script.textContent = 'document.title = "ran"'
      const style = document.createElement('style')
      style.textContent = 'body { color: rgb(1, 2, 3) }'
      document.head.append(script, style)
      await new Promise((resolve) => setTimeout(resolve, 50))
      return [document.title === 'ran', getComputedStyle(document.body).color]
    })
    expect(colour).not.toContain('rgb(1, 2, 3)')
    expect(colour[0]).toBe(false)
    expect(complaints.join()).toContain('Content Security Policy')
  })

  test('no other window opens', async ({ desktop: { page, inMain } }) => {
    const before = page.context().pages().length
    await page.evaluate(() => void window.open('https://example.com/'))
    await page.evaluate(() => void window.open(location.href))
    await page.waitForTimeout(500)
    await expect.poll(() => page.context().pages().length, { timeout: 10_000 }).toBe(before)
    expect(await inMain(({ BrowserWindow }) => BrowserWindow.getAllWindows().length, null)).toBe(1)
  })

  test('the page cannot be led elsewhere', async ({ desktop: { page } }) => {
    const address = page.url()
    for (const target of ['https://example.com/', 'http://127.0.0.1:9/', 'file:///etc/hostname']) {
      await page.evaluate((url) => location.assign(url), target)
      await page.waitForTimeout(100)
      expect(page.url()).toBe(address)
      expect(await page.evaluate(() => 'ferrule' in globalThis)).toBe(true)
    }
  })

  test('a frame cannot be embedded', async ({ desktop: { page } }) => {
    const isReached = await page.evaluate(async () => {
      const frame = document.createElement('iframe')
      frame.src = location.href
      document.body.append(frame)
      await new Promise((resolve) => setTimeout(resolve, 200))
      try {
        return frame.contentWindow !== null && 'ferrule' in frame.contentWindow
      } catch {
        return false
      }
    })
    expect(isReached).toBe(false)
  })

  test('nothing is fetched from elsewhere', async ({ desktop: { page } }) => {
    const outcome = await page.evaluate(() =>
      fetch('http://127.0.0.1:9/').then(
        () => 'fetched',
        (error: Error) => error.name,
      ),
    )
    expect(outcome).toBe('TypeError')
  })

  test('permissions are denied', async ({ desktop: { page } }) => {
    const states = await page.evaluate(async () => {
      const names = ['notifications', 'geolocation', 'clipboard-read'] as PermissionName[]
      const found = await Promise.all(names.map((name) => navigator.permissions.query({ name })))
      return found.map((status) => status.state)
    })
    expect(states).not.toContain('granted')
  })

  test('a path out of the folder of the window is not answered', async ({ desktop: { page } }) => {
    const statuses = await page.evaluate(async () => {
      const paths = [
        '/../main/index.js',
        '/..%2fmain%2findex.js',
        '/%2e%2e/main/index.js',
        '/assets/..%5c..%5cmain%5cindex.js',
        '/%2fetc%2fpasswd',
        '/index.html%00.js',
        '/%',
      ]
      const answers = await Promise.all(paths.map((path) => fetch(new URL(path, location.href))))
      return answers.map((answer) => answer.status)
    })
    expect(statuses).toEqual([404, 404, 404, 404, 404, 404, 404])
  })
})

inDouble('What the system would ask the program', (test) => {
  test('the built program cannot be told to show another page', async () => {
    const built = await readFile(new URL('../../out/main/index.js', import.meta.url), 'utf8')
    expect(built).toContain('app://')
    expect(built).not.toContain('ELECTRON_RENDERER_URL')
  })

  test('every request and check of a permission is refused', async ({ desktop: { inMain } }) => {
    const allowed = await inMain(({ session }) => {
      const { request, check, device } = session.defaultSession as unknown as {
        request(contents: null, name: string, decide: (answer: boolean) => void): void
        check(contents: null, name: string): boolean
        device(): boolean
      }
      const found: boolean[] = [device()]
      for (const name of ['media', 'geolocation', 'notifications', 'openExternal', 'fileSystem', 'hid']) {
        request(null, name, (answer) => found.push(answer))
        found.push(check(null, name))
      }
      return found
    }, null)
    expect(allowed).toHaveLength(13)
    expect(allowed).not.toContain(true)
  })

  test('the sandbox is switched on for every process', async ({ desktop: { inMain } }) => {
    expect(await inMain(({ control }) => control.isSandboxed, null)).toBe(true)
  })

  test('requests to the network are cancelled before any policy', async ({ desktop: { inMain } }) => {
    const cancelled = await inMain(({ session }) => {
      type Decide = (answer: { cancel?: boolean }) => void
      const { filter } = session.defaultSession as unknown as {
        filter(details: { url: string }, decide: Decide): void
      }
      const urls = [
        'https://example.com/',
        'http://127.0.0.1:1/',
        'file:///etc/passwd',
        'app://other/',
        'app://ferrule.evil/',
      ]
      const found: boolean[] = []
      for (const url of [...urls, 'app://ferrule/index.html'])
        filter({ url }, (answer) => found.push(answer.cancel === true))
      return found
    }, null)
    expect(cancelled).toEqual([true, true, true, true, true, false])
  })

  test('a redirect, and an embedded view, are prevented', async ({ desktop: { inMain } }) => {
    const prevented = await inMain(({ BrowserWindow }) => {
      const contents = BrowserWindow.getAllWindows()[0]?.webContents
      const found: string[] = []
      for (const name of ['will-redirect', 'will-attach-webview']) {
        contents?.emit(name, { url: 'https://example.com/', preventDefault: () => found.push(name) })
      }
      return found
    }, null)
    expect(prevented).toEqual(['will-redirect', 'will-attach-webview'])
  })

  test('a question from a foreign page is refused', async ({ desktop: { inMain } }) => {
    const outcomes = await inMain(async ({ control }) => {
      const urls = [
        'https://example.com/',
        'app://other/index.html',
        'app://ferrule.evil/',
        'file:///x',
        '',
        'about:blank',
      ]
      const asked = urls.map((url) => control.askFrom({ url, isEmbedded: false }, 'ferrule:recentWorkbooks'))
      return (await Promise.allSettled(asked)).map(({ status }) => status)
    }, null)
    expect(outcomes).toEqual(Array.from({ length: 6 }, () => 'rejected'))
  })

  test('a question from an embedded frame is refused, even one of our own address', async ({
    desktop: { inMain },
  }) => {
    const ownFrame = (isEmbedded: boolean) =>
      inMain(
        ({ control }, frame) =>
          control.askFrom(frame, 'ferrule:recentWorkbooks').then(
            () => 'answered',
            () => 'refused',
          ),
        { url: 'app://ferrule/index.html', isEmbedded },
      )
    expect(await ownFrame(true)).toBe('refused')
    expect(await ownFrame(false)).toBe('answered')
  })

  test('a question with a payload of the wrong shape is refused', async ({ desktop: { inMain } }) => {
    const outcomes = await inMain(async ({ control }) => {
      const frame = { url: 'app://ferrule/index.html', isEmbedded: false }
      const asked = [
        control.askFrom(frame, 'ferrule:saveWorkbook', 'text'),
        control.askFrom(frame, 'ferrule:saveWorkbook', 'text', { toString: 'x' }),
        control.askFrom(frame, 'ferrule:adoptFile', '/etc/passwd', 'more'),
        control.askFrom(frame, 'ferrule:showState', { name: 'x' }),
        control.askFrom(frame, 'ferrule:print', { to: 'printer', paper: 'A3', landscape: false, name: '' }),
        control.askFrom(frame, 'ferrule:keepDraft', {
          name: '',
          text: '',
          keptAt: Number.NaN,
          fileName: null,
        }),
        control.askFrom(frame, 'ferrule:exportFile', { name: 'x', mediaType: 'x', content: [1, 2] }),
        control.askFrom(frame, 'ferrule:openRecent', 7),
      ]
      const settled = await Promise.allSettled(asked)
      return settled.map((outcome) => (outcome.status === 'rejected' ? String(outcome.reason) : 'answered'))
    }, null)
    expect(outcomes).toHaveLength(8)
    for (const outcome of outcomes) expect(outcome).toContain('wrong shape')
  })
})
