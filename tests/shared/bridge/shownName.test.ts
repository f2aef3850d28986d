import { describe, expect, it } from 'vitest'
import { shownName } from '#shared/bridge/shownName.ts'

describe('A name as a title or a menu shows it', () => {
  it('is the name, or the beginning of a long one', () => {
    expect(shownName('Bass in F')).toBe('Bass in F')
    expect(shownName('a'.repeat(160))).toBe('a'.repeat(160))
    expect(shownName('a'.repeat(1001))).toBe(`${'a'.repeat(160)}…`)
  })

  it('is never cut through a character', () => {
    expect(shownName(`${'a'.repeat(159)}🎺 and more`)).toBe(`${'a'.repeat(159)}…`)
  })
})
