import { describe, expect, test } from 'vitest'
import { shortcuts, shortcutText } from '#shared/bridge/shortcuts.ts'

describe('shortcuts', () => {
  test('no two commands share their keys', () => {
    const keys = Object.values(shortcuts).flatMap((given) => given.map((one) => shortcutText(one, false)))
    expect(keys.length).toBeGreaterThan(0)
    expect(new Set(keys).size).toBe(keys.length)
  })

  test('are written as the platform writes them', () => {
    expect(shortcutText({ key: 's', main: true, shift: true }, false)).toBe('Ctrl+Shift+S')
    expect(shortcutText({ key: 's', main: true, shift: true }, true)).toBe('⇧⌘S')
    expect(shortcutText({ key: 'f1', main: false, shift: false }, false)).toBe('F1')
  })
})
