import { describe, expect, it } from 'vitest'
import type { DesignToSolve } from '#shared/solve/designProblem.ts'
import { lengthsRecord } from '#shared/solve/lengthsRecord.ts'
import { loadHighs } from '../../../src-main/headless/loadHighs.ts'
import fixture from '../../fixtures/solver.json' with { type: 'json' }

const programmer = await loadHighs()

function design(name: string): DesignToSolve {
  const scheme = fixture.schemes.find((other) => other.name === name)!
  return { ...scheme, loops: scheme.loops, fingerings: scheme.fingerings }
}

const plain = design('plain, three valves')
const free = ['L1', 'L2', 'L3']
const asked = { free, openFree: false, leaveOut: ['3'], objective: 'rms' } as const

function record(of: DesignToSolve, request: Parameters<typeof lengthsRecord>[1]) {
  const answer = lengthsRecord(of, request, programmer)
  if (answer.kind !== 'record') throw new Error(JSON.stringify(answer))
  return answer.record
}

describe('lengthsRecord', () => {
  it('has the fields of the lengths table and no others', () => {
    expect(Object.keys(record(plain, asked))).toEqual([
      'status',
      'objective',
      'lengthsMm',
      'openChangeMm',
      'errorsCents',
      'rmsCents',
      'largestCents',
      'heldByBounds',
    ])
  })

  it('finds the figures of a separate program, the open fingering apart', () => {
    const found = record(plain, asked)
    const expected = fixture.cases.find(
      (entry) => entry.name === 'plain three, third alone left out' && entry.objective === 'rms',
    )!
    expect(found).toMatchObject({ status: 'converged', objective: 'rms', openChangeMm: 0, heldByBounds: [] })
    expect(Object.keys(found.errorsCents).sort()).toEqual(Object.keys(expected.errorsCents).sort())
    expect(found.rmsCents).toBeCloseTo(expected.rmsCents, 3)
    expect(found.lengthsMm.L3).toBeCloseTo(expected.lengthsMm.L3, 2)
  })

  it('counts the open fingering when the open route is free, listed or not', () => {
    const request = { ...asked, openFree: true, objective: 'largest' } as const
    const unlisted = { ...plain, fingerings: plain.fingerings.filter(({ pressed }) => pressed.length > 0) }
    for (const found of [record(plain, request), record(unlisted, request)]) {
      expect(found.largestCents).toBeCloseTo(11.4887, 3)
      expect(found.openChangeMm).toBeCloseTo(-13.2284, 2)
      expect(found.errorsCents['0']).toBeCloseTo(11.4887, 3)
    }
  })

  it('holds the loops not named free, and writes their lengths too', () => {
    const compensating = design('compensating, third valve switches')
    const found = record(compensating, { ...asked, leaveOut: [] })
    expect(found.lengthsMm.C1).toBe(46.341381716)
    expect(found.largestCents).toBeLessThan(23)
    const all = record(compensating, { ...asked, free: [...free, 'C1', 'C2'], leaveOut: [] })
    expect(all.rmsCents).toBeLessThan(found.rmsCents)
  })

  it('brings an ascending loop, out of tune, back to length', () => {
    const ascending = design('ascending third valve')
    const off = ascending.loops.map((loop) => (loop.id === 'third' ? { ...loop, lengthMm: 200 } : loop))
    const leaveOut = ['1-2', '1-3', '2-3', '1-2-3']
    const found = record({ ...ascending, loops: off }, { ...asked, free: ['third'], leaveOut })
    expect(found.lengthsMm.third).toBeCloseTo(218.202563719, 5)
  })

  it('takes a fingering in any order of its valves', () => {
    expect(record(plain, { ...asked, leaveOut: ['3-1'] })).toEqual(
      record(plain, { ...asked, leaveOut: ['1-3'] }),
    )
  })

  it('refuses a loop or a fingering that the design does not have', () => {
    expect(lengthsRecord(plain, { ...asked, free: ['L1', 'L9'], leaveOut: ['3', '4'] }, programmer)).toEqual({
      kind: 'none',
      answer: {
        status: 'refused',
        refusals: [
          { kind: 'unknownLoop', path: 'free[1]', found: 'L9', expected: 'the id of a loop of the design' },
          {
            kind: 'unknownFingering',
            path: 'leaveOut[1]',
            found: '4',
            expected: 'a fingering of the design',
          },
        ],
      },
    })
  })

  it('refuses to find lengths when nothing is free', () => {
    expect(lengthsRecord(plain, { ...asked, free: [] }, programmer)).toMatchObject({
      kind: 'none',
      answer: { refusals: [{ kind: 'nothingFree' }] },
    })
  })
})
