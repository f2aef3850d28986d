import { createHash } from 'node:crypto'

/** The one style sheet that react-aria puts into the page by itself; any other inline style is refused. */
export const pressableStyle = `@layer {
  [data-react-aria-pressable] {
    touch-action: pan-x pan-y pinch-zoom;
  }
}`

const pressableStyleHash = createHash('sha256').update(pressableStyle).digest('base64')

/** What the page may load and run: the program's own files, and WebAssembly for the solver. */
export const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  `style-src 'self' 'sha256-${pressableStyleHash}'`,
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ')

/** Sent with every answer, by the desktop's own protocol and by the browser's server alike. */
export const protectiveHeaders: Readonly<Record<string, string>> = {
  'Content-Security-Policy': contentSecurityPolicy,
  'X-Content-Type-Options': 'nosniff',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), microphone=(), geolocation=(), usb=(), serial=(), hid=()',
  'Referrer-Policy': 'no-referrer',
}
