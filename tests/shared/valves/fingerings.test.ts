import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fingeringName, nameInValveOrder } from '#shared/valves/fingering.ts'
import { fingeringsOf } from '#shared/valves/fingerings.ts'
import { gateWords, liesInRoute } from '#shared/valves/gate.ts'
import { numberedValves } from '#shared/valves/systems/parts.ts'
import { usualFingerings, usualOrder } from '#shared/valves/usual.ts'
import type { Valve } from '#shared/valves/valve.ts'

const names = (drops: readonly number[]) => fingeringsOf(numberedValves(drops), 'all').map(({ name }) => name)
const usual = (drops: readonly number[]) => {
  const valves = numberedValves(drops)
  return usualFingerings(valves, fingeringsOf(valves, 'all')).map(({ name }) => name)
}

describe('fingerings', () => {
  it('of no valves are the open one alone', () => {
    expect(names([])).toEqual(['0'])
  })

  it('of three valves come fewest valves first, lowest valve first', () => {
    expect(names([2, 1, 3])).toEqual(['0', '1', '2', '3', '1-2', '1-3', '2-3', '1-2-3'])
  })

  it('of twelve valves are all 4096 subsets, each once', () => {
    const all = names(Array<number>(12).fill(1))
    expect(all).toHaveLength(4096)
    expect(new Set(all).size).toBe(4096)
  })

  it('given as a list keep its order, take the valves in the design’s order, and keep their own drop', () => {
    const valves = numberedValves([2, 1])
    expect(fingeringsOf(valves, [{ pressed: ['2', '1'], semitones: 4 }, { pressed: [] }])).toMatchObject([
      { name: '1-2', pressed: ['1', '2'], semitones: 4 },
      { name: '0', semitones: 0 },
    ])
  })

  it('typed in any order are named in the design’s, also where a valve’s name has a hyphen', () => {
    const order = ['T', '1', '2', 'T-1']
    expect(nameInValveOrder('2-1-T', order)).toBe('T-1-2')
    expect(nameInValveOrder('0', order)).toBe('0')
    expect(nameInValveOrder('2-9', order)).toBe('2-9')
    expect(nameInValveOrder('1-T-1', ['1', 'T-1'])).toBe('1-T-1')
  })

  it('are written 0 or with their valves joined', () => {
    expect(fingeringName([])).toBe('0')
    expect(fingeringName(['1', 'T'])).toBe('1-T')
  })
})

describe('the usual fingering', () => {
  it('is 1-2 before 3 on three valves', () => {
    expect(usual([2, 1, 3])).toEqual(['0', '2', '1', '1-2', '2-3', '1-3', '1-2-3'])
  })

  it('is 1-2 before 3 though their drops are no whole semitones', () => {
    expect(usual([2.2, 1.1, 3.3])).toEqual(['0', '2', '1', '1-2', '2-3', '1-3', '1-2-3'])
  })

  it('is 4 before 1-3 and 2-4 before 1-2-3 on four valves', () => {
    expect(usual([2, 1, 3, 5])).toEqual([
      '0',
      '2',
      '1',
      '1-2',
      '2-3',
      '4',
      '2-4',
      '1-4',
      '1-2-4',
      '2-3-4',
      '1-3-4',
      '1-2-3-4',
    ])
  })

  it('is the one with fewest valves where the third is not the sum of the first two', () => {
    expect(usual([1, 2, 4, 3])).toContain('4')
    expect(usual([1, 2, 4, 3])).not.toContain('1-2')
  })
})

describe('the usual order with a valve that shortens the tube', () => {
  const order = (valves: readonly Valve[]) =>
    [...fingeringsOf(valves, 'all')].sort(usualOrder(valves)).map(({ name }) => name)

  it('puts the long side of a double before the short side, but T before as big a drop of the long side', () => {
    expect(order([...numberedValves([2, 1, 3]), { id: 'T', semitones: -5 }])).toEqual([
      '0',
      '2',
      '1',
      '1-2',
      '3',
      '2-3',
      'T',
      '1-3',
      '2-T',
      '1-2-3',
      '1-T',
      '1-2-T',
      '3-T',
      '2-3-T',
      '1-3-T',
      '1-2-3-T',
    ])
  })

  it('puts an ascending whole tone before the descending one, which is the longer tube', () => {
    expect(order(numberedValves([2, 1, -2]))).toEqual(['0', '2', '3', '1', '2-3', '1-2', '1-3', '1-2-3'])
  })

  it('puts the shortest tube of a cut-off system first, and open last', () => {
    const valves = numberedValves([-3, -2, -1])
    const singly = fingeringsOf(valves, [{ pressed: [] }, { pressed: ['3'] }, { pressed: ['1'] }])
    expect([...singly].sort(usualOrder(valves)).map(({ name }) => name)).toEqual(['1', '3', '0'])
  })
})

describe('a gate', () => {
  it('is open exactly when every pressed valve is down and every released one up', () => {
    const bits = fc.nat({ max: 4095 })
    fc.assert(
      fc.property(bits, bits, bits, (pressed, released, down) => {
        const expected = [...Array(12).keys()].every((i) => {
          const isDown = ((down >> i) & 1) === 1
          if (((pressed >> i) & 1) === 1 && !isDown) return false
          return !(((released >> i) & 1) === 1 && isDown)
        })
        return liesInRoute({ pressed, released }, down) === expected
      }),
    )
  })

  it('is read in plain words', () => {
    expect(gateWords({ pressed: [] })).toBe('always in')
    expect(gateWords({ pressed: ['1'] })).toBe('1 down')
    expect(gateWords({ pressed: ['1', '4'], released: [] })).toBe('1 and 4 down')
    expect(gateWords({ pressed: ['1'], released: ['2', '3', 'T'] })).toBe('1 down, 2, 3 and T up')
    expect(gateWords({ pressed: [], released: ['T'] })).toBe('T up')
  })
})
