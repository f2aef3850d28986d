/** Runs the built main process with Electron's module replaced. Forked by `openDouble`. */
import { register } from 'node:module'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { runInThisContext } from 'node:vm'
import { chromium } from 'playwright-core'
import type { DoubleOptions } from './control.ts'
import * as electron from './electron.ts'

export type ToChild = { readonly id: number; readonly source: string; readonly given: unknown }
export type FromChild =
  | { readonly kind: 'ready' }
  | { readonly kind: 'answer'; readonly id: number; readonly value: unknown }
  | { readonly kind: 'error'; readonly id: number; readonly message: string }

const { app, control } = electron

const tell = (message: FromChild): void => void process.send?.(message)

process.on('message', async ({ id, source, given }: ToChild) => {
  try {
    // The tests send functions to run here, as the driver of the real Electron does.
    const run = runInThisContext(`(${source})`) as (module: typeof electron, given: unknown) => unknown
    tell({ kind: 'answer', id, value: await run(electron, given) })
  } catch (error) {
    tell({ kind: 'error', id, message: String(error) })
  }
})
process.on('disconnect', () => process.exit(1))

/** Scripts run without the test runner mark their functions with this name, and the mark is sent along. */
Object.assign(globalThis, { __name: (named: unknown) => named })

function replaceElectron(): void {
  const url = JSON.stringify(new URL('./electron.ts', import.meta.url).href)
  const hook = `export const resolve = (name, context, next) =>
    name === 'electron' ? { url: ${url}, shortCircuit: true } : next(name, context)`
  register(`data:text/javascript,${encodeURIComponent(hook)}`)
}

control.options = JSON.parse(process.env.DOUBLE_OPTIONS ?? '{}') as DoubleOptions
process.argv = ['electron', '.', ...control.options.args]
replaceElectron()
await import(pathToFileURL(resolve('out/main/index.js')).href)
if (control.exitCode === null) {
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${control.options.cdpPort}`)
  control.context = browser.contexts()[0] ?? null
  app.goReady()
  tell({ kind: 'ready' })
}
