import { describe, expect, it } from 'vitest'
import { hostileTrials } from './hostile/trials.ts'

describe('spoilt files and pastes', () => {
  it('are opened whole or refused with their place, none breaks the program', () => {
    for (const { name, endings } of hostileTrials(1900, 7)) {
      const kinds = [...endings.keys()]
      expect(
        kinds.some((kind) => kind === 'opened' || kind === 'read'),
        name,
      ).toBe(true)
      expect(
        kinds.some((kind) => kind.startsWith('refused')),
        name,
      ).toBe(true)
    }
  }, 60_000)
})
