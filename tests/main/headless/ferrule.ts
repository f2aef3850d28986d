import { execFile, spawn } from 'node:child_process'
import { fileURLToPath } from 'node:url'

import { runFerrule } from '../../../src-main/headless/run.ts'

const root = fileURLToPath(new URL('../../..', import.meta.url))

export interface Ran {
  readonly code: number
  readonly stdout: string
  readonly stderr: string
}

/** The same command without a process of its own, for the many cases that do not need one. */
export function ferruleHere(args: readonly string[]): Ran {
  const { code, output, complaint } = runFerrule(args)
  return { code, stdout: output, stderr: complaint }
}

/** Runs it with nobody reading one of its streams; the exit code. */
export function ferruleUnread(args: readonly string[], unread: 'stdout' | 'stderr'): Promise<number | null> {
  const tsx = import.meta.resolve('tsx')
  const child = spawn(process.execPath, ['--import', tsx, `${root}/src-main/headless/ferrule.ts`, ...args], {
    cwd: root,
    env: { ...process.env, npm_lifecycle_event: '' },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  child[unread].destroy()
  child[unread === 'stdout' ? 'stderr' : 'stdout'].resume()
  return new Promise((done) => child.once('close', done))
}

/** Runs the headless command as a person would, in a process of its own. */
export function ferrule(args: readonly string[], folder: string = root): Promise<Ran> {
  const tsx = import.meta.resolve('tsx')
  const script = `${root}/src-main/headless/ferrule.ts`
  const environment = { ...process.env, npm_lifecycle_event: '' }
  return new Promise((done) => {
    execFile(
      process.execPath,
      ['--import', tsx, script, ...args],
      { cwd: folder, env: environment, maxBuffer: 64 * 1024 * 1024 },
      (error, stdout, stderr) => done({ code: error === null ? 0 : Number(error.code), stdout, stderr }),
    )
  })
}
