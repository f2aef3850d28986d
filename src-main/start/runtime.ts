import { spawn } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/** The window's runtime, `null` where it is not installed. Its package is not imported: that would fetch it. */
export function runtimeIn(root: string): string | null {
  const folder = join(root, 'node_modules/electron')
  const note = join(folder, 'path.txt')
  if (!existsSync(note)) return null
  const path = join(folder, 'dist', readFileSync(note, 'utf8').trim())
  return existsSync(path) ? path : null
}

const patienceMs = 180_000

/** Fetches the runtime with the package's own script. Answers its path, `null` when it could not be had. */
export async function fetchRuntime(root: string): Promise<string | null> {
  const script = join(root, 'node_modules/electron/install.js')
  if (!existsSync(script)) return null
  await new Promise<void>((resolve) => {
    const child = spawn(process.execPath, [script], { cwd: root, stdio: 'ignore', timeout: patienceMs })
    child.once('error', () => resolve())
    child.once('exit', () => resolve())
  })
  return runtimeIn(root)
}

/** A run that ends badly this soon never showed a window. */
const shownAfterMs = 8_000

export type RunAnswer = { readonly kind: 'ended'; readonly code: number } | { readonly kind: 'notShown' }

/** Runs the desktop form until it ends. */
export function runDesktop(runtime: string, root: string, files: readonly string[]): Promise<RunAnswer> {
  const { ELECTRON_RUN_AS_NODE: _notHere, ...env } = process.env
  const startedMs = Date.now()
  return new Promise((resolve) => {
    const child = spawn(runtime, [root, ...files], { stdio: 'inherit', env })
    child.once('error', () => resolve({ kind: 'notShown' }))
    child.once('exit', (code) => {
      const failedAtOnce = code !== 0 && Date.now() - startedMs < shownAfterMs
      resolve(failedAtOnce ? { kind: 'notShown' } : { kind: 'ended', code: code ?? 1 })
    })
  })
}
