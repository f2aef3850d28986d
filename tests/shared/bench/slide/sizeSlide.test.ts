import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { tubeToOrderMm } from '#shared/bench/slide/cuts.ts'
import { sizeSlide } from '#shared/bench/slide/sizeSlide.ts'
import { slideRecord } from '#shared/bench/slide/slideRecord.ts'
import { slideTube } from '#shared/bench/slide/slideTube.ts'
import { sized, thirdSlide } from './thirdSlide.ts'

describe('A value that is no length', () => {
  it.each([
    ['legSpacingMm', 0],
    ['wallMm', -0.5],
    ['travelMm', Number.NaN],
    ['outerLegMm', Number.POSITIVE_INFINITY],
    ['routeLengthMm', 265],
    ['leastEngagedMm', -1],
    ['trimMm', -2],
  ])('is refused by its field: %s = %d', (field, value) => {
    const answer = sizeSlide({ ...thirdSlide, [field]: value })
    expect(answer.kind === 'refused' && answer.findings.map((finding) => finding.field)).toEqual([field])
  })

  it.each([
    ['returnSpacingMm', { returnSpacingMm: -1 }],
    ['quarterRadiiMm[0]', { quarterRadiiMm: [-1, 15] as const }],
  ])('is refused inside a further pair as well: %s', (field, change) => {
    const pair = { returnSpacingMm: 30, legSpacingMm: 38, ...change }
    const answer = sizeSlide({ ...thirdSlide, furtherPairs: [pair] })
    expect(answer.kind === 'refused' && answer.findings[0]?.field).toBe(`furtherPairs[0].${field}`)
  })
})

describe('A slide', () => {
  // 22 + 31 − 14 + 2·60 + 2·6 + π·38/2 = 230.690; (265 − 230.690)/2 = 17.155 for each straight end
  it('has straight ends for what its other parts leave of the loop', () => {
    expect(sized().bowMm).toBeCloseTo(59.6903, 4)
    expect(sized().straightEndMm).toBeCloseTo(17.1549, 4)
  })

  it('has inner legs short of the outer by the stop gap: 60 − 1 = 59, of which 59 − 30 = 29 stay in', () => {
    expect(sized().innerLegMm).toBe(59)
    expect(sized().engagedAtTravelMm).toBe(29)
  })

  // bow 59.690 + 2 × 17.155 = 94.000
  it('is cut from a bow with its ends and two legs, each longer by the trim at first', () => {
    const { cuts } = sized()
    expect(cuts.map(({ part, count }) => [part, count])).toEqual([
      ['bow', 1],
      ['inner leg', 2],
    ])
    expect(cuts[0]?.finishedMm).toBeCloseTo(94, 9)
    expect(cuts[0]?.cutMm).toBeCloseTo(96, 9)
    expect(cuts[1]).toEqual({ part: 'inner leg', count: 2, finishedMm: 59, cutMm: 61 })
    expect(tubeToOrderMm(cuts)).toBeCloseTo(96 + 2 * 61, 9)
  })

  it('that leaves its inner legs no length has no leg to cut', () => {
    expect(sized({ outerLegMm: 1 }).cuts.map(({ part }) => part)).toEqual(['bow'])
  })

  it('is cut no shorter than the long end of its range when that is more than the trim', () => {
    expect(sized({ toleranceMm: 3 }).cuts[1]?.cutMm).toBe(62)
    // π/2 of a spacing's ±1, and twice a leg's ±0.5
    const byParts = sized({ partTolerancesMm: { legSpacingMm: 1, outerLegMm: 0.5 } })
    expect(byParts.cuts[1]?.cutMm).toBeCloseTo(59 + 2.5708, 4)
  })

  // π/4 × (18.2² − 17.2²) = 27.803 mm²; × (94 + 2·59) mm × 8.53 g/cm³ / 1000 = 50.28 g
  it('weighs what its moving tube weighs', () => {
    expect(sized().massG).toBeCloseTo(50.278, 3)
  })

  // 1200·log2(1665/1667) = −2.078
  it('flattens by what two millimetres of tube do to the route for each millimetre out', () => {
    expect(sized().centsPerMmOut).toBeCloseTo(-2.0783, 3)
  })

  // ±0.5 mm on 1665 mm: 1200·log2(1665/1665.5) = −0.520
  it('ranges by its tolerance on the whole loop', () => {
    expect(slideRecord(sized()).rangeCents[0]).toBeCloseTo(-0.5198, 3)
    expect(slideRecord(sized()).rangeCents[1]).toBeCloseTo(0.52, 3)
  })

  // spacing ±1 is ±π/2 of tube; legs ±0.5 twice: worst 2.571, root-sum-square sqrt(2.467 + 0.5) = 1.7226
  it('ranges by its parts when those are given, worst case wider than root-sum-square', () => {
    const { range } = sized({ partTolerancesMm: { legSpacingMm: 1, outerLegMm: 0.5 } })
    expect(range.worstCents[0]).toBeCloseTo(1200 * Math.log2(1665 / 1667.5708), 4)
    expect(range.rootSumSquareCents[0]).toBeCloseTo(-(1200 / Math.LN2) * (1.7226 / 1665), 2)
  })

  const doubled = [{ returnSpacingMm: 30, legSpacingMm: 38 }]
  // A bow takes π/2 of its spacing, with quarters only what goes across; legs, ends and movement count in every leg.
  it.each([
    ['spacings of a slide that doubles back', { furtherPairs: doubled }, { legSpacingMm: 1 }, 4.7124],
    ['spacing of two quarters', { quarterRadiiMm: [15, 15] }, { legSpacingMm: 1 }, 1],
    ['straight ends', {}, { straightEndMm: 1 }, 2],
    ['knuckles', {}, { knucklesMm: 1 }, 1],
    ['passages', {}, { passagesMm: 1 }, 1],
    ['straight passage', {}, { straightPassageMm: 1 }, 1],
    ['movement', {}, { outAtPitchMm: 1 }, 2],
    ['movement of a slide that doubles back', { furtherPairs: doubled }, { outAtPitchMm: 1 }, 4],
  ] as const)('ranges by its %s', (_, change, partTolerancesMm, tubeMm) => {
    const { worstCents } = sized({ ...change, partTolerancesMm }).range
    expect(worstCents[0]).toBeCloseTo(1200 * Math.log2(1665 / (1665 + tubeMm)), 4)
  })

  it('shows the bends beside: 59.690 × (1 − 0.97255) = 1.639 mm, half of it longer at each end', () => {
    const { bend } = sized()
    expect(bend.shorterMm).toBeCloseTo(1.6386, 3)
    expect(bend.correctedStraightEndMm - bend.plainStraightEndMm).toBeCloseTo(0.8193, 3)
    expect(sized().straightEndMm).toBe(bend.plainStraightEndMm)
    expect(sized({ bendCorrection: true }).straightEndMm).toBe(bend.correctedStraightEndMm)
  })

  // 39 + 4·(100 + 6) + 2·59.690 + π·15 = 629.505; (900 − 629.505)/4 = 67.624
  it('that doubles back has four legs, two moving bows and a fixed one', () => {
    const twice = sized({
      targetMm: 900,
      outerLegMm: 100,
      furtherPairs: [{ returnSpacingMm: 30, legSpacingMm: 38 }],
    })
    expect(twice.straightEndMm).toBeCloseTo(67.6239, 3)
    expect(twice.cuts.map(({ count }) => count)).toEqual([2, 4])
    expect(twice.centsPerMmOut).toBeCloseTo(1200 * Math.log2(1665 / 1669), 9)
  })

  it('taken apart again gives its loop', () => {
    const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    const parts = fc.record({
      targetMm: mm(30, 1600),
      legSpacingMm: mm(20, 200),
      outerLegMm: mm(10, 300),
      knucklesMm: mm(0, 100),
      outAtPitchMm: mm(0, 40),
      bendCorrection: fc.boolean(),
      furtherPairs: fc.array(fc.record({ returnSpacingMm: mm(10, 90), legSpacingMm: mm(20, 90) }), {
        maxLength: 2,
      }),
    })
    fc.assert(
      fc.property(parts, (change) => {
        const job = { ...thirdSlide, ...change, routeLengthMm: change.targetMm + 1400 }
        const answer = sizeSlide(job)
        expect(answer.kind).toBe('sized')
        if (answer.kind !== 'sized') return
        const tube = slideTube(job, job.bendCorrection)
        const loopMm = tube.withoutEndsMm + tube.endCount * answer.straightEndMm
        expect(loopMm).toBeCloseTo(change.targetMm, 9)
      }),
    )
  })
})
