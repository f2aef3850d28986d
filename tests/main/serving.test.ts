import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { contentSecurityPolicy, pressableStyle } from '../../src-main/serving/headers.ts'

describe('The security policy', () => {
  test('has the one style sheet of react-aria word for word', () => {
    const path = '../../node_modules/react-aria/dist/private/interactions/usePress.mjs'
    const source = readFileSync(new URL(path, import.meta.url), 'utf8')
    const [, written] = /style\.textContent = `([^`]*)`\.trim\(\)/.exec(source) ?? []
    const attribute = /PRESSABLE_ATTRIBUTE = '([^']+)'/.exec(source)?.[1] ?? ''
    expect(written?.replace(/\$\{[^}]*\}/, attribute).trim()).toBe(pressableStyle)
  })

  test('allows nothing that is not named, and nothing inline or from elsewhere', () => {
    expect(contentSecurityPolicy.startsWith("default-src 'none'")).toBe(true)
    expect(contentSecurityPolicy).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|\*/)
  })
})
