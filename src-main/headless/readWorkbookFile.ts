import { readFileSync, statSync } from 'node:fs'
import { resolve } from 'node:path'
import { megabytesText, mostBytes } from '#shared/workbook/fileLimit.ts'
import { openWorkbook } from '#shared/workbook/openWorkbook.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { decodeUtf8 } from '../files/decodeUtf8.ts'
import { obstacleOf } from '../files/obstacle.ts'
import { type Result, refused } from './outcome.ts'

/** Reads and opens a design file; every reason for refusing names the file as it was given. */
export function readWorkbookFile(file: string): Result<Workbook> {
  const bytes = readBytes(file)
  if (!bytes.ok) return bytes
  const text = decodeUtf8(bytes.value)
  if (text === null) return refused(`${file}: found bytes that are not UTF-8, expected a design file in JSON`)
  const opened = openWorkbook(text)
  return opened.ok ? { ok: true, value: opened.workbook } : refused(`${file}: ${opened.failure.message}`)
}

function readBytes(file: string): Result<Uint8Array> {
  const path = resolve(startedIn(), file)
  try {
    const stats = statSync(path)
    const obstacle = obstacleOf(stats)
    if (obstacle === 'directory') return refused(`${file}: found a directory, expected a design file`)
    if (obstacle === 'notAFile') {
      return refused(`${file}: found no regular file, expected a design file`)
    }
    if (obstacle === 'tooLarge') {
      return refused(
        `${file}: found ${megabytesText(stats.size, 1)}, expected at most ${megabytesText(mostBytes)}`,
      )
    }
    return { ok: true, value: readFileSync(path) }
  } catch (error) {
    return refused(`${file}: ${systemReason(error)}`)
  }
}

/** npm runs a script in the package's folder and tells where it was called from. */
function startedIn(): string {
  const byNpm = process.env.npm_lifecycle_event === 'ferrule' ? process.env.INIT_CWD : undefined
  return byNpm ?? process.cwd()
}

const systemReasons: Readonly<Record<string, string>> = {
  ENOENT: 'found no such file, expected a design file',
  ENOTDIR: 'found no such file, expected a design file',
  EACCES: 'found a file that may not be read, expected a design file',
  EPERM: 'found a file that may not be read, expected a design file',
}

/** Only what the system itself reports is a reason; anything else is a mistake of ours. */
function systemReason(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : undefined
  if (code === undefined) throw error
  return systemReasons[code] ?? `found a file that cannot be read (${code}), expected a design file`
}
