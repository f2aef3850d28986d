import { mkdir, symlink, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect } from 'vitest'
import { answerFrom } from '../../../src-main/main/appProtocol.ts'
import { contentSecurityPolicy } from '../../../src-main/serving/headers.ts'
import { ownFilesIn } from '../../../src-main/serving/ownFiles.ts'
import { test } from '../../folder.ts'

async function builtWindow(folder: string): Promise<(request: Request) => Promise<Response>> {
  const root = join(folder, 'renderer')
  await mkdir(join(root, 'assets'), { recursive: true })
  await writeFile(join(folder, 'secret.js'), 'secret')
  await writeFile(join(root, 'index.html'), '<!doctype html>')
  await writeFile(join(root, 'assets', 'main.js'), 'export {}')
  await writeFile(join(root, 'assets', 'solver.wasm'), '')
  await symlink(join(folder, 'secret.js'), join(root, 'assets', 'link.js'))
  return answerFrom(ownFilesIn(root))
}

describe('The program’s own protocol', () => {
  test('answers with a built file, its kind and the security policy', async ({ folder }) => {
    const answer = await builtWindow(folder)
    const page = await answer(new Request('app://ferrule/'))
    expect(await page.text()).toBe('<!doctype html>')
    expect(page.headers.get('Content-Type')).toBe('text/html; charset=utf-8')
    expect(page.headers.get('Content-Security-Policy')).toBe(contentSecurityPolicy)
    expect(page.headers.get('X-Content-Type-Options')).toBe('nosniff')
    const script = await answer(new Request('app://ferrule/assets/main.js'))
    expect(script.headers.get('Content-Type')).toBe('text/javascript; charset=utf-8')
    const solver = await answer(new Request('app://ferrule/assets/solver.wasm'))
    expect(solver.headers.get('Content-Type')).toBe('application/wasm')
  })

  test('finds nothing outside the built window, however the path is written', async ({ folder }) => {
    const answer = await builtWindow(folder)
    const paths = [
      '../secret.js',
      '%2e%2e/secret.js',
      '..%2fsecret.js',
      '..%5csecret.js',
      '..\\secret.js',
      'assets/../../secret.js',
      'assets/..%2f..%2fsecret.js',
      '%252e%252e%252fsecret.js',
      'assets/link.js',
      `${folder.slice(1)}/secret.js`,
      'index.html%00',
      'assets',
      'assets/',
      '%',
      '__proto__',
    ]
    for (const path of paths) {
      const found = await answer(new Request(`app://ferrule/${path}`))
      expect([path, found.status, await found.text()]).toEqual([path, 404, ''])
      expect(found.headers.get('Content-Security-Policy')).toBe(contentSecurityPolicy)
    }
  })

  test('answers no other host and no other method', async ({ folder }) => {
    const answer = await builtWindow(folder)
    expect((await answer(new Request('app://other/index.html'))).status).toBe(404)
    expect((await answer(new Request('app://ferrule/', { method: 'POST' }))).status).toBe(405)
  })
})
