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

/** How a file stands against what was known of it. `changed` carries the time of the change. */
export type Standing =
  | { readonly kind: 'same' }
  | { readonly kind: 'gone' }
  | { readonly kind: 'changed'; readonly modifiedMs: number }

/**
 * How the file at `path` stands against what `known` saw. A file that was only touched, or copied over with the
 * same content, is the same. Rejects when a file that is there cannot be read.
 */
export async function standingOf(path: string, known: Fingerprint): Promise<Standing> {
  const now = await stat(path).catch(() => null)
  if (now === null) return { kind: 'gone' }
  if (now.size === known.sizeBytes && now.mtimeMs === known.modifiedMs) return { kind: 'same' }
  const isSame = now.size === known.sizeBytes && digest(await readFile(path)) === known.sha256
  return isSame ? { kind: 'same' } : { kind: 'changed', modifiedMs: now.mtimeMs }
}

function digest(content: Uint8Array): string {
  return createHash('sha256').update(content).digest('hex')
}
