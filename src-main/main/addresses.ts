import { programOrigin, programPage } from './appProtocol.ts'

/** Set when the program is built: true only under the development server, and then folded away. */
declare const DEVELOPMENT: boolean

const developmentPage = DEVELOPMENT ? (process.env.ELECTRON_RENDERER_URL ?? null) : null

/** The page that the window shows. */
export const ownPage = developmentPage ?? programPage

const ownOrigins = developmentPage === null ? [programOrigin] : developmentOrigins(developmentPage)

function developmentOrigins(page: string): readonly string[] {
  const { host, origin } = new URL(page)
  return [origin, `ws://${host}`]
}

export function isOwnPage(url: string): boolean {
  return ownOrigins.some((origin) => url === origin || url.startsWith(`${origin}/`))
}

/** Besides its own files the page may look at what it made itself, and the developer's tools at themselves. */
export function isOwnAddress(url: string): boolean {
  return isOwnPage(url) || /^(blob|data|devtools):/.test(url)
}
