import { codeOf } from '../files/troubles.ts'
import type { RunningServer } from '../server/server.ts'
import { serveWindow } from '../server/server.ts'

/** Tried first: the browser keeps drafts and recent files by address, so the address should stay the same. */
export const usualPort = 47_613

export interface Served {
  readonly server: RunningServer
  /** The port that was wanted and could not be had, and whether another program has it. */
  readonly refused: { readonly port: number; readonly isTaken: boolean } | null
}

/** Serves the window on the wanted port, or on any free one. */
export async function serveSomewhere(folder: string, wantedPort: number): Promise<Served> {
  try {
    return { server: await serveWindow(folder, wantedPort), refused: null }
  } catch (error) {
    if (!['EADDRINUSE', 'EACCES', 'EADDRNOTAVAIL'].includes(codeOf(error))) throw error
    const isTaken = codeOf(error) === 'EADDRINUSE'
    return { server: await serveWindow(folder, 0), refused: { port: wantedPort, isTaken } }
  }
}
