import { constants } from 'node:fs'
import type { FileHandle } from 'node:fs/promises'
import { open } from 'node:fs/promises'
import { basename } from 'node:path'
import { megabytesText, mostBytes } from '#shared/workbook/fileLimit.ts'
import { decodeUtf8 } from './decodeUtf8.ts'
import type { Fingerprint } from './fingerprint.ts'
import { fingerprintOf } from './fingerprint.ts'
import { obstacleOf } from './obstacle.ts'
import { readingTrouble } from './troubles.ts'

export type ReadAnswer =
  | { readonly kind: 'read'; readonly text: string; readonly fingerprint: Fingerprint }
  | { readonly kind: 'failed'; readonly message: string }

/** Without O_NONBLOCK a named pipe would hold the call until someone writes to it; Windows has no such flag. */
const openFlags = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0)

/** Reads a workbook's text. Its size and kind are looked at before anything is read. */
export async function readText(path: string): Promise<ReadAnswer> {
  let file: FileHandle | null = null
  try {
    file = await open(path, openFlags)
    return await readFrom(file, path)
  } catch (error) {
    return failed(readingTrouble(error, path))
  } finally {
    await file?.close()
  }
}

async function readFrom(file: FileHandle, path: string): Promise<ReadAnswer> {
  const times = await file.stat()
  const obstacle = obstacleOf(times)
  if (obstacle === 'directory') return failed(readingTrouble({ code: 'EISDIR' }, path))
  if (obstacle === 'notAFile') return failed(`“${basename(path)}” is not a file.`)
  if (obstacle === 'tooLarge') return failed(tooLarge(path))
  const content = await file.readFile()
  const text = decodeUtf8(content)
  if (text === null) return failed(`“${basename(path)}” is not text in UTF-8, so it is not a workbook.`)
  return { kind: 'read', text, fingerprint: fingerprintOf(content, times) }
}

/** The sentence for a file above the size limit. */
export function tooLarge(path: string): string {
  return `“${basename(path)}” is larger than ${megabytesText(mostBytes)}, more than any workbook needs.`
}

function failed(message: string): ReadAnswer {
  return { kind: 'failed', message }
}
