import { createHash } from 'node:crypto'
import { readFile, stat } from 'node:fs/promises'

/** What a file was when it was last read or written, to notice that someone else changed it. */
export interface Fingerprint {
  readonly sizeBytes: number
  readonly modifiedMs: number
  readonly sha256: string
}

export interface FileTimes {
  readonly size: number
  readonly mtimeMs: number
}

export function fingerprintOf(content: Uint8Array, times: FileTimes): Fingerprint {
  return { sizeBytes: times.size, modifiedMs: times.mtimeMs, sha256: digest(content) }
}

/**
 * Whether the file at `path` still holds what `known` saw. A file that is gone counts as unchanged: writing it
 * anew loses nothing. A file that was only touched, or copied over with the same content, is unchanged too.
 */
export async function isUnchanged(path: string, known: Fingerprint): Promise<boolean> {
  const now = await stat(path).catch(() => null)
  if (now === null) return true
  if (now.size === known.sizeBytes && now.mtimeMs === known.modifiedMs) return true
  if (now.size !== known.sizeBytes) return false
  return digest(await readFile(path)) === known.sha256
}

function digest(content: Uint8Array): string {
  return createHash('sha256').update(content).digest('hex')
}
