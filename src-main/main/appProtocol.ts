import { readFile } from 'node:fs/promises'
import type { Protocol } from 'electron'
import { protectiveHeaders } from '../serving/headers.ts'
import type { OwnFiles } from '../serving/ownFiles.ts'
import { ownFile } from '../serving/ownFiles.ts'

export const scheme = 'app'
const host = 'ferrule'

export const programOrigin = `${scheme}://${host}`
export const programPage = `${programOrigin}/index.html`

/** Must run before the program is ready. A standard, secure scheme gives the page an origin of its own. */
export function declareScheme(protocol: Protocol): void {
  const privileges = { standard: true, secure: true, supportFetchAPI: true, codeCache: true }
  protocol.registerSchemesAsPrivileged([{ scheme, privileges }])
}

/** Answers the window's requests from its own files. */
export function answerFrom(files: OwnFiles): (request: Request) => Promise<Response> {
  return async (request) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') return refused(405)
    const url = new URL(request.url)
    if (url.host !== host) return refused(404)
    const file = ownFile(files, url.pathname)
    if (file === null) return refused(404)
    const headers = { ...protectiveHeaders, 'Content-Type': file.mediaType, 'Cache-Control': 'no-cache' }
    return new Response(request.method === 'HEAD' ? null : await readFile(file.path), { headers })
  }
}

function refused(status: number): Response {
  return new Response(null, { status, headers: { ...protectiveHeaders } })
}
