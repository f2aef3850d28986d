import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { contentSecurityPolicy, pressableStyle, protectiveHeaders } from '../../src-main/serving/headers.ts'

describe('The security policy', () => {
  test('has the one style sheet of react-aria word for word', () => {
    const path = '../../node_modules/react-aria/dist/private/interactions/usePress.mjs'
    const source = readFileSync(new URL(path, import.meta.url), 'utf8')
    const [, written] = /style\.textContent = `([^`]*)`\.trim\(\)/.exec(source) ?? []
    const attribute = /PRESSABLE_ATTRIBUTE = '([^']+)'/.exec(source)?.[1] ?? ''
    expect(written?.replace(/\$\{[^}]*\}/, attribute).trim()).toBe(pressableStyle)
  })

  test('names exactly what the page needs', () => {
    const pressable = `'sha256-${createHash('sha256').update(pressableStyle).digest('base64')}'`
    expect(contentSecurityPolicy.split('; ')).toEqual([
      "default-src 'none'",
      "script-src 'self' 'wasm-unsafe-eval'",
      `style-src 'self' ${pressable}`,
      "img-src 'self' data: blob:",
      "font-src 'self'",
      "connect-src 'self'",
      "worker-src 'self'",
      "base-uri 'none'",
      "form-action 'none'",
      "frame-ancestors 'none'",
    ])
  })

  test('comes with the other protective headers', () => {
    expect(protectiveHeaders).toEqual({
      'Content-Security-Policy': contentSecurityPolicy,
      'X-Content-Type-Options': 'nosniff',
      'Cross-Origin-Opener-Policy': 'same-origin',
      'Cross-Origin-Resource-Policy': 'same-origin',
      'Permissions-Policy': 'camera=(), microphone=(), geolocation=(), usb=(), serial=(), hid=()',
      'Referrer-Policy': 'no-referrer',
    })
  })

  test('allows nothing that is not named, and nothing inline or from elsewhere', () => {
    expect(contentSecurityPolicy.startsWith("default-src 'none'")).toBe(true)
    expect(contentSecurityPolicy).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|\*/)
  })
})
