import { control } from './control.ts'

type Handler = (request: Request) => Response | Promise<Response>

export const handlers = new Map<string, Handler>()

const privileged = new Set<string>()

export const protocol = {
  registerSchemesAsPrivileged(schemes: readonly { scheme: string }[]): void {
    if (control.isReady) throw new Error('Schemes must be registered before the program is ready.')
    for (const { scheme } of schemes) privileged.add(scheme)
  },
  handle(scheme: string, handler: Handler): void {
    if (!control.isReady) throw new Error('A protocol can be handled only once the program is ready.')
    if (!privileged.has(scheme))
      throw new Error(`The scheme ${scheme} was not registered, so it has no origin.`)
    handlers.set(scheme, handler)
  },
}
