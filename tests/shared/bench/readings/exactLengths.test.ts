import { describe, expect, it } from 'vitest'
import { exactFractions } from '#shared/bench/readings/exactLengths.ts'

const valves = [
  { id: '1', semitones: 2 },
  { id: '4', semitones: 5 },
]
const loop = (id: string, pressed: string[], released: string[] = []) => ({
  id,
  lengthMm: 0,
  pressed,
  released,
})

describe('Exact lengths', () => {
  it('of no loops are none', () => expect(exactFractions(valves, []).size).toBe(0))

  // 2^(2/12) − 1 = 0.122462, 2^(5/12) − 1 = 0.334840, compensating 2^(7/12) − 1 − both = 0.041005
  it('of a compensating loop are what the two loops below it lack', () => {
    const found = exactFractions(valves, [loop('L1', ['1']), loop('L4', ['4']), loop('C1', ['1', '4'])])
    expect(found.get('L1')).toBeCloseTo(0.122462, 6)
    expect(found.get('L4')).toBeCloseTo(0.33484, 6)
    expect(found.get('C1')).toBeCloseTo(0.0410052, 6)
  })

  it('of a double instrument go by the side that the change valve chooses', () => {
    const found = exactFractions(valves, [loop('F', ['1'], ['4']), loop('B', ['1', '4']), loop('T', ['4'])])
    expect(found.get('F')).toBeCloseTo(0.122462, 6)
    // 2^(7/12) − 2^(5/12) = 0.163467
    expect(found.get('B')).toBeCloseTo(0.163467, 6)
  })

  // 2^(6/12) − 1 − 0.122462 − 0.334840 = −0.043088
  it('go by the drop that a fingering is given', () => {
    const loops = [loop('L1', ['1']), loop('L4', ['4']), loop('C1', ['1', '4'])]
    const found = exactFractions(valves, loops, [{ pressed: ['4', '1'], semitones: 6 }])
    expect(found.get('L4')).toBeCloseTo(0.33484, 6)
    expect(found.get('C1')).toBeCloseTo(-0.043088, 6)
  })

  it('of two loops with the same gate are not settled', () => {
    const found = exactFractions(valves, [loop('a', ['1']), loop('b', ['1']), loop('L4', ['4'])])
    expect([...found.keys()]).toEqual(['L4'])
  })
})
