import { readdir, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'

const leftover = /^\.ferrule-[0-9a-f]{12}\.part$/

/** Younger ones may belong to another program that is saving into the same shared folder at this moment. */
const certainlyDeadMs = 60 * 60 * 1000

/** Removes the temporary files that a crash in the middle of saving left in a folder. */
export async function sweepLeftovers(folder: string, nowMs: number): Promise<void> {
  const names = await readdir(folder).catch(() => [])
  for (const name of names.filter((found) => leftover.test(found))) {
    const path = join(folder, name)
    const times = await stat(path).catch(() => null)
    if (times !== null && nowMs - times.mtimeMs > certainlyDeadMs) {
      await rm(path, { force: true }).catch(() => undefined)
    }
  }
}
