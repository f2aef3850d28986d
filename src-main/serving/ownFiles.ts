import { readdirSync } from 'node:fs'
import { extname, join, relative, sep } from 'node:path'

export interface OwnFile {
  readonly path: string
  readonly mediaType: string
}

/** The files of the window by the path they are asked for, `/` being its first page. */
export type OwnFiles = ReadonlyMap<string, OwnFile>

const mediaTypes: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
}

/**
 * Lists the built window once. Answers are looked up here and nowhere else, so no path, however it is written,
 * can lead out of the folder; links are not followed, and what begins with a dot is not the window's.
 */
export function ownFilesIn(folder: string): OwnFiles {
  const files = new Map<string, OwnFile>()
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue
    const path = join(entry.parentPath, entry.name)
    const parts = relative(folder, path).split(sep)
    if (parts.some((part) => part.startsWith('.'))) continue
    files.set(`/${parts.join('/')}`, { path, mediaType: mediaTypeOf(path) })
  }
  const page = files.get('/index.html')
  if (page !== undefined) files.set('/', page)
  return files
}

function mediaTypeOf(path: string): string {
  return mediaTypes[extname(path).toLowerCase()] ?? 'application/octet-stream'
}

/** The file that a request path names, `null` when it is none of ours or badly written. */
export function ownFile(files: OwnFiles, requestPath: string): OwnFile | null {
  try {
    return files.get(decodeURIComponent(requestPath)) ?? null
  } catch {
    return null
  }
}
