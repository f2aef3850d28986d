import { mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { _electron } from 'playwright-core'
import { obstacle, presentSurroundings } from '../../../src-main/start/obstacles.ts'
import { runtimeIn } from '../../../src-main/start/runtime.ts'
import { complaintsOf } from './complaints.ts'
import type { Desktop, LaunchOptions } from './desktop.ts'
import { scriptDialogs, scripting } from './scripting.ts'

const root = new URL('../../..', import.meta.url).pathname

const runtime = runtimeIn(root)

/** Whether the real program can run here: its runtime is installed, and nothing else is in the way. */
export const electronCanRun = runtime !== null && obstacle(presentSurroundings(true)) === null

/** Runs the program in the real Electron. */
export async function openElectron(options: LaunchOptions = {}): Promise<Desktop> {
  if (runtime === null) throw new Error('Electron is not installed here.')
  if (options.bare) throw new Error('A bare page is something that only the double has.')
  const userData = options.userData ?? (await mkdtemp(join(tmpdir(), 'ferrule-data-')))
  const args = [root, `--user-data-dir=${userData}`, ...(options.files ?? [])]
  const program = await _electron.launch({ executablePath: runtime, args, cwd: root })
  const process = program.process()
  const ended = new Promise<number | null>((resolve) => process.once('exit', resolve))
  const page = await program.firstWindow()
  const complaints = complaintsOf(page)
  const inMain: Desktop['inMain'] = (act, given) => program.evaluate(act as never, given) as never
  await scriptDialogs(inMain)
  await page.waitForLoadState()
  const kill = async (): Promise<void> => {
    process.kill('SIGKILL')
    await ended
  }
  return { userData, page, complaints, ended, inMain, kill, ...scripting(inMain) }
}
