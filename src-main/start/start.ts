import { join, resolve } from 'node:path'
import { build, isStale } from './building.ts'
import { obstacle, presentSurroundings } from './obstacles.ts'
import type { StartOptions } from './options.ts'
import { readOptions, usage } from './options.ts'
import { fetchRuntime, runDesktop, runtimeIn } from './runtime.ts'
import { serveSomewhere, usualPort } from './serving.ts'

const root = resolve(import.meta.dirname, '../..')

async function start(options: StartOptions): Promise<void> {
  if (isStale(root)) {
    console.log('Building Ferrule…')
    if (!build(root)) return fail('Ferrule could not be built; the reason stands above.')
  }
  const reason = options.browser ? 'you asked for it' : await whyNotDesktop(options)
  if (reason !== null) await showInBrowser(options, reason)
}

/** Runs the desktop form to its end and answers `null`, or answers why it could not be shown. */
async function whyNotDesktop(options: StartOptions): Promise<string | null> {
  const present = runtimeIn(root)
  const reason = obstacle(presentSurroundings(present !== null))
  if (reason !== null) return reason
  if (present === null)
    console.log("Fetching the window's runtime; this happens once and can take a few minutes…")
  const runtime = present ?? (await fetchRuntime(root))
  if (runtime === null) return "the window's runtime could not be fetched"
  // npm moves to the project's folder; the person named the files from where they were.
  const from = process.env.INIT_CWD ?? process.cwd()
  const answer = await runDesktop(
    runtime,
    root,
    options.files.map((file) => resolve(from, file)),
  )
  if (answer.kind === 'notShown') return "the window's runtime does not start on this system"
  process.exitCode = answer.code
  return null
}

async function showInBrowser(options: StartOptions, reason: string): Promise<void> {
  const { server, refused } = await serveSomewhere(join(root, 'out/renderer'), options.port ?? usualPort)
  console.log(`Ferrule runs in the browser because ${reason}.`)
  if (refused !== null) {
    const why = refused.isTaken ? 'is taken' : 'may not be used here'
    console.log(`Port ${refused.port} ${why}, so another is used.`)
  }
  if (options.files.length > 0)
    console.log('Open your file there with “Open”: a browser cannot be handed one.')
  console.log(`Its address: ${server.address}`)
  console.log('Ctrl+C ends it.')
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void server.stop())
}

function fail(message: string): void {
  console.error(message)
  process.exitCode = 1
}

const answer = readOptions(process.argv.slice(2))
if (answer.kind === 'refused') {
  fail(`${answer.message}\n\n${usage}`)
} else {
  await start(answer.options).catch((error: unknown) => fail(`Ferrule could not start: ${String(error)}`))
}
