import { existsSync } from 'node:fs'
import { mkdir, readdir, readlink, rm, symlink, writeFile } from 'node:fs/promises'
import type { IncomingMessage } from 'node:http'
import { request } from 'node:http'
import { networkInterfaces } from 'node:os'
import { join } from 'node:path'
import { describe, expect } from 'vitest'
import type { RunningServer } from '../../../src-main/server/server.ts'
import { serveWindow } from '../../../src-main/server/server.ts'
import { contentSecurityPolicy, protectiveHeaders } from '../../../src-main/serving/headers.ts'
import { serveSomewhere } from '../../../src-main/start/serving.ts'
import { test as withFolder } from '../../folder.ts'

interface Answer {
  readonly status: number | undefined
  readonly headers: IncomingMessage['headers']
  readonly body: string
}

interface Asked {
  readonly path?: string
  readonly method?: string
  readonly host?: string | null
  readonly address?: string
}

const test = withFolder.extend<{ root: string; server: RunningServer }>({
  root: async ({ folder }, use) => {
    const root = join(folder, 'renderer')
    await mkdir(root)
    await writeFile(join(root, 'index.html'), '<!doctype html>')
    await writeFile(join(root, 'main.js'), 'export {}')
    await writeFile(join(folder, 'secret.js'), 'secret')
    await mkdir(join(folder, 'outside'))
    await writeFile(join(folder, 'outside', 'secret.js'), 'secret')
    await symlink(join(folder, 'secret.js'), join(root, 'link.js'))
    await symlink(join(folder, 'outside'), join(root, 'linked'))
    await writeFile(join(root, '.env'), 'secret')
    await mkdir(join(root, '.git'))
    await writeFile(join(root, '.git', 'config'), 'secret')
    await use(root)
  },
  server: async ({ root }, use) => {
    const server = await serveWindow(root, 0)
    await use(server)
    await server.stop()
  },
})

/** Sends the path and the host as they are written, which `fetch` would not. */
function ask(
  server: RunningServer,
  { path = '/', method = 'GET', host, address }: Asked = {},
): Promise<Answer> {
  const headers = host === null ? {} : { Host: host ?? `127.0.0.1:${server.port}` }
  return new Promise((resolve, reject) => {
    const asking = request(
      { host: address ?? '127.0.0.1', port: server.port, path, method, headers, setHost: false },
      (response) => {
        let body = ''
        response.on('data', (part) => {
          body += part
        })
        response.on('end', () => resolve({ status: response.statusCode, headers: response.headers, body }))
      },
    )
    asking.on('error', reject)
    asking.end()
  })
}

/** Files that this process holds open below a folder, where the system tells. */
async function openBelow(folder: string): Promise<readonly string[]> {
  const names = await readdir('/proc/self/fd')
  const paths = await Promise.all(names.map((name) => readlink(`/proc/self/fd/${name}`).catch(() => '')))
  return paths.filter((path) => path.startsWith(folder))
}

describe.skipIf(!existsSync('/proc/self/fd'))('a download that is broken off', () => {
  test('leaves no file open', async ({ root, server }) => {
    await writeFile(join(root, 'large.js'), 'x'.repeat(8_000_000))
    const again = await serveWindow(root, 0)
    for (let i = 0; i < 5; i++) {
      await new Promise<void>((resolve) => {
        const asking = request({ host: '127.0.0.1', port: again.port, path: '/large.js' }, (response) => {
          response.once('data', () => {
            response.destroy()
            resolve()
          })
        })
        asking.end()
      })
    }
    await expect.poll(() => openBelow(root)).toEqual([])
    await again.stop()
    expect(server.port).not.toBe(again.port)
  })
})

describe('The browser form’s server', () => {
  test('gives the page with the headers of the desktop form', async ({ server }) => {
    const answer = await ask(server)
    expect(answer).toMatchObject({ status: 200, body: '<!doctype html>' })
    expect(answer.headers['content-security-policy']).toBe(contentSecurityPolicy)
    for (const [name, value] of Object.entries(protectiveHeaders))
      expect([name, answer.headers[name.toLowerCase()]]).toEqual([name, value])
    expect(answer.headers['content-type']).toBe('text/html; charset=utf-8')
  })

  test('is asked with a query too, and with HEAD gives no body', async ({ server }) => {
    expect(await ask(server, { path: '/main.js?v=1' })).toMatchObject({ status: 200, body: 'export {}' })
    const head = await ask(server, { path: '/main.js', method: 'HEAD' })
    expect(head).toMatchObject({ status: 200, body: '' })
    expect(head.headers['content-type']).toBe('text/javascript; charset=utf-8')
  })

  test('has no icon, and that is no error', async ({ server }) => {
    expect(await ask(server, { path: '/favicon.ico' })).toMatchObject({ status: 204, body: '' })
  })

  test('is known by two names and by no other', async ({ server }) => {
    expect((await ask(server, { host: `localhost:${server.port}` })).status).toBe(200)
    const others = [
      '127.0.0.1',
      'localhost',
      `ferrule.test:${server.port}`,
      `127.0.0.1:${server.port + 1}`,
      '',
    ]
    for (const host of others) {
      const answer = await ask(server, { host })
      expect([host, answer.status, answer.body.includes('doctype')]).toEqual([host, 421, false])
      expect(answer.headers['content-security-policy']).toBe(contentSecurityPolicy)
    }
    expect([400, 421]).toContain((await ask(server, { host: null })).status)
  })

  test('only lets itself be read', async ({ server }) => {
    for (const method of ['POST', 'PUT', 'DELETE', 'OPTIONS', 'PATCH']) {
      const answer = await ask(server, { method })
      expect([method, answer.status, answer.headers.allow]).toEqual([method, 405, 'GET, HEAD'])
      expect(answer.headers['access-control-allow-origin']).toBeUndefined()
    }
  })

  test('finds nothing outside its folder, however the path is written', async ({ server, folder }) => {
    const paths = [
      '/../secret.js',
      '/..%2fsecret.js',
      '/%2e%2e/secret.js',
      '/..\\secret.js',
      '/..%5csecret.js',
      '//secret.js',
      `/${folder}/secret.js`,
      `file://${folder}/secret.js`,
      'http://127.0.0.1/index.html',
      '*',
      '/%',
      '/index.html%00',
      '/%252e%252e%252fsecret.js',
      '/main.js/../../secret.js',
      '/%2e%2e%2fsecret.js',
      '/..%c0%afsecret.js',
      '/__proto__',
    ]
    for (const path of paths) {
      const answer = await ask(server, { path })
      expect([path, answer.status, answer.body.includes('secret')]).toEqual([path, 404, false])
    }
  })

  test('follows no link, to a file or to a folder, and gives nothing that begins with a dot', async ({
    server,
  }) => {
    for (const path of [
      '/link.js',
      '/linked/secret.js',
      '/.env',
      '/.git/config',
      '/%2eenv',
      '/%2egit%2fconfig',
    ]) {
      const answer = await ask(server, { path })
      expect([path, answer.status, answer.body.includes('secret')]).toEqual([path, 404, false])
    }
  })

  test('answers for a file that has gone since it started', async ({ server, root }) => {
    await rm(join(root, 'main.js'))
    expect(await ask(server, { path: '/main.js' })).toMatchObject({ status: 404 })
    expect((await ask(server)).status).toBe(200)
  })

  test('listens on one loopback address, not on all addresses', async ({ server, skip }) => {
    skip(process.platform !== 'linux', 'only there is every address of 127/8 this computer')
    await expect(ask(server, { address: '127.0.0.2' })).rejects.toThrow('ECONNREFUSED')
  })

  test('cannot be reached from another machine', async ({ server, skip }) => {
    const outer = Object.values(networkInterfaces())
      .flatMap((addresses) => addresses ?? [])
      .find(({ family, internal }) => family === 'IPv4' && !internal)
    skip(outer === undefined, 'this machine has no other address')
    await expect(ask(server, { address: outer?.address ?? '' })).rejects.toThrow('ECONNREFUSED')
  })
})

describe('The port', () => {
  test('is the wanted one while it is free, and another when it is taken', async ({ server, root }) => {
    const other = await serveSomewhere(root, server.port)
    expect(other.refused).toEqual({ port: server.port, isTaken: true })
    expect(other.server.port).not.toBe(server.port)
    const freed = other.server.port
    await other.server.stop()
    const again = await serveSomewhere(root, freed)
    expect([again.refused, again.server.address]).toEqual([null, `http://127.0.0.1:${freed}/`])
    await again.server.stop()
  })
})
