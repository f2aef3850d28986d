import type { BrowserContext } from 'playwright-core'
import { protocol } from './protocol.ts'

type RequestHandler = (contents: unknown, permission: string, decide: (allowed: boolean) => void) => void
type CheckHandler = (contents: unknown, permission: string, origin: string) => boolean
type Filter = (details: { url: string }, decide: (answer: { cancel?: boolean }) => void) => void

/** Without handlers Electron grants everything; so does the double. */
class Session {
  readonly protocol = protocol
  request: RequestHandler = (_contents, _permission, decide) => decide(true)
  check: CheckHandler = () => true
  device: () => boolean = () => true
  filter: Filter = (_details, decide) => decide({})
  readonly webRequest = {
    onBeforeRequest: (filter: Filter): void => {
      this.filter = filter
    },
  }
  setPermissionRequestHandler(handler: RequestHandler): void {
    this.request = handler
  }
  setPermissionCheckHandler(handler: CheckHandler): void {
    this.check = handler
  }
  setDevicePermissionHandler(handler: () => boolean): void {
    this.device = handler
  }
  setDisplayMediaRequestHandler(): void {}
}

export const session = { defaultSession: new Session() }

/** Electron's names of permissions, and the driver's. */
const permissions = {
  notifications: 'notifications',
  geolocation: 'geolocation',
  'clipboard-read': 'clipboard-read',
  midiSysex: 'midi-sysex',
} as const

/** Gives Chromium the permissions that the program's handlers would give. */
export async function grantPermissions(context: BrowserContext): Promise<void> {
  const { request, check } = session.defaultSession
  const granted = Object.entries(permissions).filter(([name]) => {
    let allowed = false
    request(null, name, (answer) => {
      allowed = answer
    })
    return allowed && check(null, name, '')
  })
  await context.clearPermissions()
  await context.grantPermissions(granted.map(([, name]) => name))
}

export function isCancelled(url: string): boolean {
  let cancelled = false
  session.defaultSession.filter({ url }, ({ cancel }) => {
    cancelled = cancel === true
  })
  return cancelled
}
