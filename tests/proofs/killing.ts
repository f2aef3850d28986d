import { spawn } from 'node:child_process'
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'vite'
import { draftStoreIn } from '../../src-main/files/draftStore.ts'
import { sweepLeftovers } from '../../src-main/files/leftovers.ts'
import { versionIn, versionText } from './version.ts'

/** What was found after one kill. Versions are counted from 1 upwards; `null` is a text that is not whole. */
export interface KillOutcome {
  /** Last version whose saving had begun; the one before it is the old one. */
  readonly saving: number
  /** Last version that was said to be saved, and last that was said to be kept aside; 0 before the first. */
  readonly saved: number
  readonly kept: number
  readonly inFile: number | null
  /** What recovery offers; `null` when it offers nothing. */
  readonly inDraft: number | null
  /** The version kept beside the file; `null` when it is not whole. */
  readonly inPrevious: number | null
  /** Temporary files that the kill left, and those that remain after sweeping. */
  readonly leftovers: number
  readonly leftoversSwept: number
}

/** The child as one plain script, so that it starts quickly. */
export async function buildChild(): Promise<string> {
  const outDir = await mkdtemp(join(tmpdir(), 'ferrule-kills-'))
  await build({
    configFile: false,
    root: fileURLToPath(new URL('../..', import.meta.url)),
    logLevel: 'warn',
    ssr: { noExternal: true },
    build: {
      ssr: fileURLToPath(new URL('./savingChild.ts', import.meta.url)),
      outDir,
      emptyOutDir: true,
      rollupOptions: { output: { entryFileNames: 'child.mjs' } },
    },
  })
  return join(outDir, 'child.mjs')
}

/** Starts saving over a whole file and kills the child `afterMs` after its first step; then looks what is there. */
export async function killOnce(child: string, afterMs: number): Promise<KillOutcome> {
  const folder = await mkdtemp(join(tmpdir(), 'ferrule-kill-'))
  try {
    const work = join(folder, 'work')
    await mkdir(work)
    await writeFile(join(work, 'bass.ferrule'), versionText(1))
    await writeFile(join(work, 'bass.ferrule~'), versionText(0))
    const steps = await stepsUntilKilled(child, folder, afterMs)
    return await lookAt(folder, steps)
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

function stepsUntilKilled(child: string, folder: string, afterMs: number): Promise<string> {
  return new Promise((resolve, reject) => {
    const running = spawn(process.execPath, [child, folder, '2'], { stdio: ['ignore', 'pipe', 'pipe'] })
    let steps = ''
    let complaint = ''
    running.stdout.on('data', (part) => {
      if (steps === '') setTimeout(() => running.kill('SIGKILL'), afterMs)
      steps += part
    })
    running.stderr.on('data', (part) => {
      complaint += part
    })
    running.once('error', reject)
    running.once('close', (_code, signal) => {
      if (signal === 'SIGKILL') resolve(steps)
      else reject(new Error(`The saving child ended by itself: ${complaint}`))
    })
  })
}

async function lookAt(folder: string, steps: string): Promise<KillOutcome> {
  const work = join(folder, 'work')
  const places = [work, join(folder, 'data'), join(folder, 'data', 'drafts')]
  const read = (name: string): Promise<string> => readFile(join(work, name), 'utf8').catch(() => '')
  const leftovers = await countLeftovers(places)
  const [draft] = await draftStoreIn(join(folder, 'data')).left()
  const outcome = {
    saving: lastOf(steps, 'saving'),
    saved: lastOf(steps, 'saved'),
    kept: lastOf(steps, 'kept'),
    inFile: versionIn(await read('bass.ferrule')),
    inDraft: draft === undefined ? null : versionIn(draft.text),
    inPrevious: versionIn(await read('bass.ferrule~')),
    leftovers,
  }
  const nextDayMs = Date.now() + 24 * 60 * 60 * 1000
  for (const place of places) await sweepLeftovers(place, nextDayMs)
  return { ...outcome, leftoversSwept: leftovers - (await countLeftovers(places)) }
}

async function countLeftovers(places: readonly string[]): Promise<number> {
  const names = await Promise.all(places.map((place) => readdir(place).catch(() => [])))
  return names.flat().filter((name) => name.endsWith('.part')).length
}

/** The version in the last whole line of a step; 0 when there is none. */
function lastOf(steps: string, step: string): number {
  const lines = steps.slice(0, steps.lastIndexOf('\n') + 1).split('\n')
  return Number(lines.findLast((line) => line.startsWith(`${step} `))?.split(' ')[1] ?? 0)
}

/** What is wrong after a kill, one sentence each; empty when nothing is. */
export function lossesOf(outcome: KillOutcome): readonly string[] {
  const { saving, saved, kept, inFile, inDraft, inPrevious, leftovers, leftoversSwept } = outcome
  const newest = Math.max(inFile ?? 0, inDraft ?? 0)
  return [
    ...(inFile === null ? ['the file is not one whole version'] : []),
    // A line may be cut off by the kill, so that the next saving had begun already.
    ...(inFile !== null && inFile < Math.max(saved, saving - 1, 1)
      ? [`the file holds version ${inFile}, older than the old one`]
      : []),
    ...(inFile !== null && inFile > Math.max(kept, saving, 1) + 1
      ? [`the file holds version ${inFile}, newer than any that was written`]
      : []),
    ...(newest < kept ? [`version ${kept} was kept aside and is neither in the file nor offered`] : []),
    ...(inPrevious === null ? ['the previous version is not whole'] : []),
    ...(leftoversSwept < leftovers ? ['temporary files stay behind'] : []),
  ]
}
