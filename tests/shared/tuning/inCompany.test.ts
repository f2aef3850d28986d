import { describe, expect, it } from 'vitest'
import { inCompany } from '#shared/tuning/inCompany.ts'
import { tuningTables } from '#shared/tuning/tables.ts'
import { tubeRuler } from '#shared/tuning/tubeRuler.ts'
import { routing } from '#shared/valves/route.ts'
import { systemOf } from '#shared/valves/systems/systems.ts'
import { instrumentWith } from '../../fixtures/designs.ts'

function taken(id: string, pressed: readonly string[], semitones?: number) {
  const { valves, loops } = systemOf(id)!.build(2000)
  return inCompany(2000, routing(2000, valves, loops), valves, pressed, semitones)
}

describe('a fingering taken apart', () => {
  it('of a plain system: the last loop fits alone and is short in company by what the account says', () => {
    const apart = taken('plain-3', ['1', '3'])
    expect(apart.alone.fingering).toBe('3')
    expect(apart.alone.errorCents).toBeCloseTo(0, 9)
    expect(apart.company.fingering).toBe('1')
    // 2000·(2^(3/12) − 1) = 378.414 against 2244.924·(2^(3/12) − 1) = 424.755
    expect(apart.addedAloneMm).toBeCloseTo(378.414, 2)
    expect(apart.neededInCompanyMm).toBeCloseTo(424.755, 2)
    expect(apart.missingMm).toBeCloseTo(46.341, 2)
    expect(apart.missingBeforeMm).toBe(apart.missingMm)
    expect(apart.together.errorCents).toBeCloseTo(30.315, 3)
    expect(apart.further).toEqual([])
    expect(apart.gone).toEqual([])
  })

  it('of a compensating system: the further loop gives what is missing', () => {
    const apart = taken('compensating-3', ['1', '3'])
    expect(apart.further).toEqual(['C1'])
    expect(apart.missingBeforeMm).toBeCloseTo(46.341, 2)
    expect(apart.errorBeforeCents).toBeCloseTo(30.315, 3)
    expect(apart.furtherMm).toBeCloseTo(46.341, 2)
    expect(apart.missingMm).toBeCloseTo(0, 9)
  })

  it('of three valves: the first two are the company', () => {
    const apart = taken('compensating-4', ['1', '2', '4'])
    expect(apart.company.fingering).toBe('1-2')
    expect(apart.further).toEqual(['C1', 'C2'])
    expect(apart.missingBeforeMm - apart.furtherMm).toBeCloseTo(apart.missingMm, 9)
  })

  it('of a loop for every combination: what its valves open alone drops out', () => {
    const apart = taken('independent-combination', ['1', '3'])
    expect(apart.further).toEqual(['loop 1-3'])
    expect(apart.gone).toEqual(['loop 3', 'loop 1'])
    expect(apart.missingMm).toBeCloseTo(0, 9)
  })

  it('of an ascending valve: its loop was in the open route and does not count as gone', () => {
    const apart = taken('ascending-3', ['1', '3'])
    expect(apart.addedAloneMm).toBeLessThan(0)
    expect(apart.gone).toEqual([])
  })

  it('takes a nominal drop of its own', () => {
    expect(taken('plain-3', ['1', '2'], 4).together.semitones).toBe(4)
  })

  it('takes two valves', () => {
    expect(() => taken('plain-3', ['3'])).toThrow(RangeError)
  })
})

describe('the tube ruler', () => {
  const { valves, loops, fingerings } = systemOf('plain-4')!.build(4000)
  const { combinations, summary } = tuningTables(instrumentWith(4000, { valves, loops, fingerings }))
  const ruler = tubeRuler(summary.bodyMm, loops, combinations)

  it('lays the pieces of every fingering end to end on the body: together they are the route', () => {
    expect(ruler.rows).toHaveLength(16)
    for (const { pieces, lengthMm, requiredLengthMm, missingMm } of ruler.rows) {
      const laid = pieces.reduce((sum, piece) => sum + piece.lengthMm, ruler.bodyMm)
      expect(laid).toBeCloseTo(lengthMm, 9)
      expect(missingMm).toBeCloseTo(requiredLengthMm - lengthMm, 9)
    }
  })

  it('reaches as far as any row has or needs, and never less than from the body on', () => {
    const most = Math.max(...combinations.map((row) => row.requiredLengthMm)) - ruler.bodyMm
    expect(ruler.reachMm[0]).toBe(0)
    expect(ruler.reachMm[1]).toBeCloseTo(most, 9)
    expect(tubeRuler(4000, [], []).reachMm).toEqual([0, 0])
    const long = tubeRuler(4100, [], [{ ...combinations[0]!, lengthMm: 4100, requiredLengthMm: 4000 }])
    expect(long.reachMm).toEqual([-100, 0])
  })
})
