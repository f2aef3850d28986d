import { createReadStream } from 'node:fs'
import type { IncomingMessage, Server, ServerResponse } from 'node:http'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { protectiveHeaders } from '../serving/headers.ts'
import type { OwnFile, OwnFiles } from '../serving/ownFiles.ts'
import { ownFile, ownFilesIn } from '../serving/ownFiles.ts'

export interface RunningServer {
  readonly port: number
  /** `http://127.0.0.1:PORT/` */
  readonly address: string
  stop(): Promise<void>
}

/**
 * Serves the built window on the loopback address only. `port` 0 takes any free one. Rejects with the system's
 * error (`EADDRINUSE` and the like) when the port cannot be had.
 */
export async function serveWindow(folder: string, port: number): Promise<RunningServer> {
  const files = ownFilesIn(folder)
  const server = createServer((request, response) => answer(files, request, response))
  await listen(server, port)
  const taken = (server.address() as AddressInfo).port
  return { port: taken, address: `http://127.0.0.1:${taken}/`, stop: () => stop(server) }
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen({ port, host: '127.0.0.1', exclusive: true }, () => {
      server.off('error', reject)
      resolve()
    })
  })
}

function stop(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve())
    server.closeAllConnections()
  })
}

interface Refusal {
  readonly status: number
  readonly message: string
}

function answer(files: OwnFiles, request: IncomingMessage, response: ServerResponse): void {
  for (const [name, value] of Object.entries(protectiveHeaders)) response.setHeader(name, value)
  response.setHeader('Cache-Control', 'no-cache')
  const found = lookUp(files, request)
  if ('status' in found) refuse(response, found)
  else send(found, request.method === 'HEAD', response)
}

function lookUp(files: OwnFiles, request: IncomingMessage): OwnFile | Refusal {
  if (!isOurHost(request)) return { status: 421, message: 'This address belongs to another program.' }
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    return { status: 405, message: 'Only reading is possible here.' }
  }
  const path = (request.url ?? '/').split('?', 1)[0] ?? '/'
  // A browser asks for this unasked, and complains on the page's console when there is none.
  if (path === '/favicon.ico' && !files.has(path)) return { status: 204, message: '' }
  return ownFile(files, path) ?? { status: 404, message: 'There is no such file.' }
}

/** A page elsewhere whose name was made to resolve to this machine asks with its own name as host. */
function isOurHost(request: IncomingMessage): boolean {
  const port = request.socket.localPort
  // Of the port that every address has unless another is named, nothing is said.
  const names = ['127.0.0.1', 'localhost'].flatMap((name) => [
    `${name}:${port}`,
    ...(port === 80 ? [name] : []),
  ])
  return names.includes(request.headers.host ?? '')
}

function send(file: OwnFile, headOnly: boolean, response: ServerResponse): void {
  response.setHeader('Content-Type', file.mediaType)
  if (headOnly) {
    response.end()
    return
  }
  // The headers go out with the first bytes: a file that is gone can still be answered for.
  const content = createReadStream(file.path)
  content.once('error', () => {
    if (response.headersSent) response.destroy()
    else refuse(response, { status: 404, message: 'This file is gone; start the program again.' })
  })
  // Who breaks a download off does not leave the file open.
  response.once('close', () => content.destroy())
  content.pipe(response)
}

function refuse(response: ServerResponse, { status, message }: Refusal): void {
  if (status === 405) response.setHeader('Allow', 'GET, HEAD')
  response.statusCode = status
  if (message === '') {
    response.end()
    return
  }
  response.setHeader('Content-Type', 'text/plain; charset=utf-8')
  response.end(`${message}\n`)
}
