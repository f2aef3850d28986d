import { describe, expect, test } from 'vitest'
import { writtenMidi } from '#shared/pitch/transposition.ts'

describe('a written note', () => {
  test('lies above the sounding one on an instrument in B♭', () => {
    expect(writtenMidi(58, -2)).toBe(60)
  })

  test('lies below the sounding one on an instrument in high E♭', () => {
    expect(writtenMidi(63, 3)).toBe(60)
  })
})
