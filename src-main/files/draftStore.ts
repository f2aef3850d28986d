import { randomUUID } from 'node:crypto'
import { readdir, rm } from 'node:fs/promises'
import { basename, join } from 'node:path'
import * as z from 'zod'
import type { Draft, LeftDraft } from '#shared/bridge/bridge.ts'
import { inTurn } from '#shared/bridge/inTurn.ts'
import { draftShape } from '../channels/payloads.ts'
import { sweepLeftovers } from './leftovers.ts'
import { readText } from './readText.ts'
import { readStored, writeStored } from './stored.ts'

/**
 * Unsaved work in the user's data, so that a crash or a power cut leaves it there. Every run of the window keeps
 * its work under an id of its own, so that work left behind is never written over before the person decided on it.
 */
export interface DraftStore {
  /** `path` is the file that is current; the draft is joined to it when it has the draft's own file name. */
  keep(draft: Draft, path: string | null): Promise<void>
  /** Forgets what this run kept. */
  forget(): Promise<void>
  /** What earlier runs left behind, newest first. What its file holds already is forgotten, not offered. */
  left(): Promise<readonly LeftDraft[]>
  forgetLeft(id: string): Promise<void>
  /** Path of the file that left work belongs to; `null` when it has none or is not there. */
  pathOf(id: string): Promise<string | null>
  /** The window stopped working: what it kept is left behind, and the next one keeps its own. */
  leaveBehind(): Promise<void>
}

const storedShape = draftShape.extend({ path: z.string().max(4096).nullable() })

const idPattern = /^[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/

export function draftStoreIn(dataFolder: string): DraftStore {
  const folder = join(dataFolder, 'drafts')
  const fileOf = (id: string): string => join(folder, `${id}.json`)
  const queue = inTurn()
  let own = randomUUID() as string

  async function keep(draft: Draft, path: string | null): Promise<void> {
    const joined = path !== null && basename(path) === draft.fileName ? path : null
    if (!(await writeStored(fileOf(own), { ...draft, path: joined })))
      throw new Error('The draft could not be kept.')
  }

  async function left(): Promise<readonly LeftDraft[]> {
    await sweepLeftovers(folder, Date.now())
    const names = await readdir(folder).catch(() => [])
    const ids = names
      .map((name) => name.replace(/\.json$/, ''))
      .filter((id) => idPattern.test(id) && id !== own)
    const found = await Promise.all(ids.map((id) => readLeft(id)))
    return found.filter((draft) => draft !== null).toSorted((one, other) => other.keptAt - one.keptAt)
  }

  async function readLeft(id: string): Promise<LeftDraft | null> {
    const stored = await readStored(fileOf(id), storedShape)
    if (stored === null) return null
    const { path, ...draft } = stored
    if (path !== null && (await isSaved(path, draft.text))) {
      await rm(fileOf(id), { force: true })
      return null
    }
    return { ...draft, id, fileName: path === null ? null : draft.fileName }
  }

  async function pathOf(id: string): Promise<string | null> {
    if (!idPattern.test(id)) return null
    return (await readStored(fileOf(id), storedShape))?.path ?? null
  }

  return {
    keep: (draft, path) => queue(() => keep(draft, path)),
    forget: () => queue(() => rm(fileOf(own), { force: true })),
    left: () => queue(left),
    forgetLeft: (id) =>
      queue(async () => {
        if (idPattern.test(id) && id !== own) await rm(fileOf(id), { force: true })
      }),
    pathOf: (id) => queue(() => pathOf(id)),
    leaveBehind: () =>
      queue(async () => {
        own = randomUUID()
      }),
  }
}

/** A crash between the end of saving and forgetting the draft loses nothing, and is not worth a question. */
async function isSaved(path: string, text: string): Promise<boolean> {
  const answer = await readText(path)
  return answer.kind === 'read' && answer.text === text
}
