import { describe, expect, it } from 'vitest'
import { centsBetween } from '#shared/pitch/cents.ts'
import { loopForDropMm } from '#shared/tubing/requiredLength.ts'
import { tubeForCentsMm } from '#shared/tubing/slideMovement.ts'
import { combinationTable } from '#shared/tuning/combinations.ts'
import { fingeringsOf } from '#shared/valves/fingerings.ts'
import { routing } from '#shared/valves/route.ts'
import { numberedValves } from '#shared/valves/systems/parts.ts'
import published from '../../fixtures/published.json' with { type: 'json' }

const caseOf = (name: string) => published.cases.find((each) => each.name === name)!

/** Drops and errors of three loops given as shares of an open length of 1. */
function threeLoops(loops: { readonly [valve: string]: number | undefined }) {
  const valves = numberedValves([2, 1, 3])
  const own = valves.map(({ id }) => ({ id, lengthMm: loops[id]!, pressed: [id] }))
  return combinationTable(1, routing(1, valves, own), fingeringsOf(valves, 'all'))
}

describe('published figures', () => {
  it('just ratios: loops of 1/8, 1/15 and 1/5 drop 204, 112, 316, 304, 409, 487 and 572 cents', () => {
    const { loops, expected, toleranceCents } = caseOf('just ratios 1/8, 1/15, 1/5')
    const rows = threeLoops(loops!)
    for (const [fingering, drop] of Object.entries(expected.drop!)) {
      const row = rows.find((each) => each.fingering === fingering)!
      expect(Math.abs(centsBetween(1, row.lengthMm) - drop!)).toBeLessThan(toleranceCents!)
    }
  })

  it('loops of 12.36, 6.00 and 20.00 per cent leave the printed errors', () => {
    const { loops, expected, exact, toleranceCents } = caseOf(
      'six, twelve-point-three-six and twenty per cent',
    )
    const rows = threeLoops(loops!)
    for (const [fingering, cents] of Object.entries(expected.error!)) {
      const row = rows.find((each) => each.fingering === fingering)!
      expect(Math.abs(row.errorCents - cents!)).toBeLessThan(toleranceCents!)
      expect(row.errorCents).toBeCloseTo((exact as Readonly<Record<string, number>>)[fingering]!, 3)
    }
  })

  it('the fifth harmonic adds −13.7 cents', () => {
    expect(1200 * Math.log2(5) - 2800).toBeCloseTo(-13.69, 2)
  })

  it('a contrabass in C of 196 in takes loops of 11.65, 24.00, 37.08 and 65.62 in', () => {
    const { openLength, expected, tolerance } = caseOf('contrabass in C, 196 in')
    const drops: Readonly<Record<string, number>> = { '1': 2, '2': 1, '3': 3, '4': 5 }
    for (const [valve, inches] of Object.entries(expected.exactLoop!)) {
      expect(Math.abs(loopForDropMm(openLength!, drops[valve]!) - inches!)).toBeLessThan(tolerance!)
    }
  })

  it('a high instrument of 140 cm: 1-2 is supplied 25.5 cm and needs 26.5', () => {
    const { openLength, expected, tolerance } = caseOf('high instrument of 140 cm')
    const first = loopForDropMm(openLength!, 2)
    const second = loopForDropMm(openLength!, 1)
    expect(Math.abs(first - expected.exactLoop!['1']!)).toBeLessThan(tolerance!)
    expect(Math.abs(second - expected.exactLoop!['2']!)).toBeLessThan(tolerance!)
    expect(Math.abs(first + second - expected['1-2 supplied']!)).toBeLessThan(tolerance!)
    expect(Math.abs(loopForDropMm(openLength!, 3) - expected['1-2 needed']!)).toBeLessThan(tolerance!)
  })

  it('an E♭ bass of 13 ft comes from A 435 to 440 by 1.77 in of tube, 0.89 in of slide', () => {
    const { openLength, expected, tolerance } = caseOf('E-flat bass of 13 ft from A 435 to 440')
    const cents = centsBetween(435, 440)
    expect(cents).toBeCloseTo(expected.cents!, 1)
    const tubeInches = -tubeForCentsMm(openLength!, -cents)
    expect(Math.abs(tubeInches - expected['tube to remove']!)).toBeLessThan(tolerance!)
    expect(tubeInches / 2).toBeCloseTo(0.89, 2)
  })

  it('from B♭ to C by shortening takes 10.91 per cent of the length, not 12', () => {
    expect(-loopForDropMm(100, -2)).toBeCloseTo(10.91, 2)
  })

  it('one loop gives the open length: 16.82, 8.17, 5.29 and 2.99 loops for 1, 2, 3 and 5 semitones', () => {
    const loops = [1, 2, 3, 5].map((semitones) => 1 / loopForDropMm(1, semitones))
    for (const [i, expected] of [16.82, 8.17, 5.29, 2.99].entries()) expect(loops[i]).toBeCloseTo(expected, 2)
  })
})
