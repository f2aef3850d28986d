import { handlers } from './protocol.ts'

/**
 * Chromium cannot be given a new scheme from outside, so `app://host/x` is loaded as `https://host.app.test/x`:
 * secure and with an origin of its own, like the real one.
 */
export function inChromium(url: string): string {
  const [, scheme, host, rest] = /^([a-z][a-z0-9+.-]*):\/\/([^/?#]*)(.*)$/.exec(url) ?? []
  if (scheme === undefined || !handlers.has(scheme)) return url
  return new URL(`https://${host}.${scheme}.test${rest || '/'}`).href
}

export function inProgram(url: string): string {
  const [, host, scheme, rest] = /^https:\/\/([^/]*)\.([a-z0-9+-]+)\.test(.*)$/.exec(url) ?? []
  return scheme !== undefined && handlers.has(scheme) ? `${scheme}://${host}${rest}` : url
}
