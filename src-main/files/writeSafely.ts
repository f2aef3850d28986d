import { randomBytes } from 'node:crypto'
import type { Stats } from 'node:fs'
import { access, constants, copyFile, link, open, realpath, rename, rm, stat } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import type { Fingerprint } from './fingerprint.ts'
import { fingerprintOf } from './fingerprint.ts'
import { codeOf, writingTrouble } from './troubles.ts'

export type WriteAnswer =
  | { readonly kind: 'written'; readonly fingerprint: Fingerprint }
  | { readonly kind: 'failed'; readonly message: string }

export interface WriteOptions {
  /** Keeps what was there as `name~`, one generation back. */
  readonly keepPrevious: boolean
}

/**
 * Writes a file so that whoever looks, at any moment and after any crash, finds the old content or the new
 * one, whole: a temporary file in the same folder is written, flushed to the disk and renamed over the target.
 * A link is followed, so that the file it names is replaced and not the link.
 */
export async function writeSafely(
  path: string,
  content: Uint8Array,
  options: WriteOptions,
): Promise<WriteAnswer> {
  let temporary: string | null = null
  try {
    const target = await realpath(path).catch(() => path)
    const before = await statsOf(target)
    if (before !== null) await refuseUnlessReplaceable(target, before)
    temporary = temporaryBeside(target)
    const fingerprint = await writeAndFlush(temporary, content, before)
    if (before !== null && options.keepPrevious) await keepPrevious(target)
    await renamePatiently(temporary, target)
    await flushFolder(dirname(target))
    return { kind: 'written', fingerprint }
  } catch (error) {
    if (temporary !== null) await rm(temporary, { force: true }).catch(() => undefined)
    return { kind: 'failed', message: writingTrouble(error, path) }
  }
}

async function statsOf(path: string): Promise<Stats | null> {
  try {
    return await stat(path)
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return null
    throw error
  }
}

/** Renaming over a read-only file succeeds where the folder is writable, so the file itself is asked. */
async function refuseUnlessReplaceable(path: string, stats: Stats): Promise<void> {
  if (stats.isDirectory()) throw Object.assign(new Error('a folder'), { code: 'EISDIR' })
  if ((stats.mode & 0o222) === 0) throw Object.assign(new Error('read-only'), { code: 'EACCES' })
  await access(path, constants.W_OK)
}

/** Short whatever the target is called, so that a long name that the system allows can still be written. */
function temporaryBeside(target: string): string {
  return join(dirname(target), `.ferrule-${randomBytes(6).toString('hex')}.part`)
}

async function writeAndFlush(path: string, content: Uint8Array, before: Stats | null): Promise<Fingerprint> {
  const file = await open(path, 'wx', before === null ? 0o666 : before.mode & 0o777)
  try {
    await file.writeFile(content)
    // The creation mask may have taken bits away that the old file had.
    if (before !== null) await file.chmod(before.mode & 0o777).catch(() => undefined)
    await file.sync()
    return fingerprintOf(content, await file.stat())
  } finally {
    await file.close()
  }
}

/** The previous version never stands in the way of the new one: where it cannot be kept, saving goes on. */
async function keepPrevious(target: string): Promise<void> {
  const temporary = temporaryBeside(target)
  try {
    await link(target, temporary).catch(() => copyFile(target, temporary, constants.COPYFILE_EXCL))
    await rename(temporary, join(dirname(target), `${basename(target)}~`))
  } catch {
    await rm(temporary, { force: true }).catch(() => undefined)
  }
}

const patienceMs = [20, 50, 100, 200, 400]

/** A virus scanner or an indexer on Windows may hold the target for a moment. */
async function renamePatiently(from: string, to: string): Promise<void> {
  for (const waitMs of process.platform === 'win32' ? patienceMs : []) {
    try {
      return await rename(from, to)
    } catch (error) {
      if (!['EPERM', 'EACCES', 'EBUSY'].includes(codeOf(error))) throw error
      await new Promise((resume) => setTimeout(resume, waitMs))
    }
  }
  await rename(from, to)
}

/** Makes the rename itself last through a power cut. Not every system lets a folder be flushed. */
async function flushFolder(path: string): Promise<void> {
  try {
    const folder = await open(path, 'r')
    await folder.sync().finally(() => folder.close())
  } catch {
    // Windows and some network folders refuse; the file's own content is flushed already.
  }
}
