import { createHash } from 'node:crypto'
import { access } from 'node:fs/promises'
import { basename, dirname, join, sep } from 'node:path'
import * as z from 'zod'
import type { RecentWorkbook } from '#shared/bridge/bridge.ts'
import { inTurn } from '#shared/bridge/inTurn.ts'
import { readStored, writeStored } from './stored.ts'

const longest = 10

const shape = z.array(z.string().max(4096)).max(100)

/** Files opened or saved lately, newest first, kept in the user's data. */
export interface RecentList {
  /** Those still there; the missing ones are dropped for good. */
  list(): Promise<readonly RecentWorkbook[]>
  pathOf(id: string): Promise<string | null>
  add(path: string): Promise<void>
  clear(): Promise<void>
}

/** `homeFolder` is shown as `~`. */
export function recentListIn(dataFolder: string, homeFolder: string): RecentList {
  const file = join(dataFolder, 'recent.json')
  const queue = inTurn()
  const read = async (): Promise<readonly string[]> => (await readStored(file, shape)) ?? []
  const pruned = async (): Promise<readonly string[]> => {
    const paths = await read()
    const present = await stillThere(paths)
    if (present.length < paths.length) await writeStored(file, present)
    return present
  }
  return {
    list: () => queue(async () => (await pruned()).map((path) => asShown(path, homeFolder))),
    pathOf: (id) => queue(async () => (await read()).find((path) => idOf(path) === id) ?? null),
    add: (path) => queue(async () => void (await writeStored(file, withNewest(await read(), path)))),
    clear: () => queue(async () => void (await writeStored(file, []))),
  }
}

/** The list with `path` in front, once, and no longer than is useful. */
export function withNewest(paths: readonly string[], path: string): readonly string[] {
  return [path, ...paths.filter((other) => other !== path)].slice(0, longest)
}

async function stillThere(paths: readonly string[]): Promise<readonly string[]> {
  const present = await Promise.all(
    paths.map((path) =>
      access(path).then(
        () => true,
        () => false,
      ),
    ),
  )
  return paths.filter((_, index) => present[index])
}

function asShown(path: string, homeFolder: string): RecentWorkbook {
  return { id: idOf(path), name: basename(path), place: shortened(dirname(path), homeFolder) }
}

function idOf(path: string): string {
  return createHash('sha256').update(path).digest('hex').slice(0, 16)
}

/** A folder for show: the home folder as `~`, and of a deep one only its beginning and its last two parts. */
export function shortened(folder: string, homeFolder: string): string {
  const inHome = folder === homeFolder || folder.startsWith(homeFolder + sep)
  const shown = inHome ? `~${folder.slice(homeFolder.length)}` : folder
  const parts = shown.split(sep)
  if (shown.length <= 48 || parts.length <= 4) return shown
  return [...parts.slice(0, 2), '…', ...parts.slice(-2)].join(sep)
}
