import { describe, expect, it } from 'vitest'
import { nominalDrop } from '#shared/valves/nominalDrop.ts'

const valves = [
  { id: '1', semitones: 2 },
  { id: '2', semitones: 1 },
  { id: '3', semitones: 4 },
]
const listed = [{ pressed: [] }, { pressed: ['1', '3'], semitones: 5 }, { pressed: ['1', '2'] }]

describe('The nominal drop of a fingering', () => {
  it('is the sum of its valves', () => {
    expect(nominalDrop(valves, 'all', ['1', '3'])).toBe(6)
    expect(nominalDrop(valves, listed, ['1', '2'])).toBe(3)
    expect(nominalDrop(valves, listed, ['1', '2', '3'])).toBe(7)
    expect(nominalDrop(valves, listed, [])).toBe(0)
  })

  it('is what the list gives it, its valves in any order', () => {
    expect(nominalDrop(valves, listed, ['1', '3'])).toBe(5)
    expect(nominalDrop(valves, listed, ['3', '1'])).toBe(5)
  })
})
