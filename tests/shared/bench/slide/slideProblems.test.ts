import { describe, expect, it } from 'vitest'
import type { SlideJob } from '#shared/bench/slide/slide.ts'
import type { SlideProblem } from '#shared/bench/slide/slideProblems.ts'
import { sized } from './thirdSlide.ts'

const problems = (change: Partial<SlideJob>) => sized(change).problems
const kinds = (change: Partial<SlideJob>) => problems(change).map(({ kind }) => kind)

/** A slide's problem of a kind; throws when it has none. */
function problem<Kind extends SlideProblem['kind']>(kind: Kind, change: Partial<SlideJob>) {
  const isIt = (each: SlideProblem): each is Extract<SlideProblem, { kind: Kind }> => each.kind === kind
  const found = problems(change).find(isIt)
  if (found === undefined) throw new Error(`Not ${kind}, but ${kinds(change)}`)
  return found
}

describe('A slide that can be built', () => {
  it('has no problems', () => expect(problems({})).toEqual([]))
  it('may have straight ends of exactly nothing', () => {
    expect(problems({ targetMm: 171 + Math.PI * 19 })).toEqual([])
  })
})

describe('A slide that cannot be built', () => {
  // 230.690 − 220 = 10.690 over, two legs: 5.345 each; legs stay above 1 + 30 + 20 = 51
  it('with too short a loop says how much shorter each outer leg must be', () => {
    expect(problems({ targetMm: 220 })).toEqual([
      {
        kind: 'negativeStraightEnd',
        shortenOuterLegsByMm: expect.closeTo(5.3451, 3),
        message: 'The parts are longer than the loop. Each outer leg must be 5.3 mm shorter.',
      },
    ])
  })

  it('can be built once its legs are that much shorter', () => {
    const { shortenOuterLegsByMm } = problem('negativeStraightEnd', { targetMm: 220 })
    expect(problems({ targetMm: 220, outerLegMm: 60 - shortenOuterLegsByMm })).toEqual([])
  })

  // 60 mm apart: 171 + 94.248 = 265.248, and legs may lose 9 each; at 235 mm: 15.124 an end, 6.124 over, × 4/π = 7.797
  it.each([false, true])(
    'is advised so that it can be built, bends counted acoustically or not: %s',
    (bendCorrection) => {
      const tooShort = { bendCorrection, legSpacingMm: 60, outerLegMm: 51 }
      const { nearerByMm } = problem('legsTooFarApart', { ...tooShort, targetMm: 225 })
      const nearer = { ...tooShort, targetMm: 225, legSpacingMm: 60 - nearerByMm }
      expect(sized(nearer).straightEndMm).toBeCloseTo(0, 6)
      const { lengthenByMm } = problem('loopTooShort', { ...tooShort, targetMm: 100 })
      const narrowest = { ...tooShort, legSpacingMm: 19.2, targetMm: 100 + lengthenByMm }
      expect(sized(narrowest).straightEndMm).toBeCloseTo(0, 6)
    },
  )

  it('with legs that cannot be shortened enough says how much nearer they must be', () => {
    const wide = { targetMm: 235, legSpacingMm: 60 }
    expect(kinds(wide)).toEqual(['negativeStraightEnd', 'legsTooFarApart'])
    const { nearerByMm } = problem('legsTooFarApart', wide)
    expect(nearerByMm).toBeCloseTo(7.797, 2)
    expect(problems({ targetMm: 235, legSpacingMm: 60 - nearerByMm, outerLegMm: 51 })).toEqual([])
  })

  // 39 + 2·(40 + 6) + π·60/2 = 225.248, 55.248 over: × 2/π = 35.172
  it('with legs shorter than the travel needs does not count on longer ones', () => {
    const short = { targetMm: 170, legSpacingMm: 60, outerLegMm: 40 }
    expect(problem('legsTooFarApart', short).nearerByMm).toBeCloseTo(35.172, 3)
  })

  // 39 + 4·(51 + 6) + 2·π·60/2 + π·30/2 = 502.620, 102.620 over: two bows save π for each millimetre, 32.665
  it('that doubles back has all of its moving bows made narrower', () => {
    const furtherPairs = [{ returnSpacingMm: 30, legSpacingMm: 60 }]
    const twice = { targetMm: 400, legSpacingMm: 60, furtherPairs }
    expect(problem('legsTooFarApart', twice).nearerByMm).toBeCloseTo(32.665, 3)
  })

  // quarters meet at 50 mm: 39 + 2·(51 + 6) + π·25 = 231.540
  it('with quarters that meet lacks what they need', () => {
    const quarters = { targetMm: 200, legSpacingMm: 60, quarterRadiiMm: [25, 25] } as const
    expect(problem('loopTooShort', quarters).lengthenByMm).toBeCloseTo(31.54, 3)
  })

  // shortest: 39 + 2·51 + 12 + π·19.2/2 = 183.159
  it('with the shortest legs and narrowest bow still too long says what the loop lacks', () => {
    expect(problem('loopTooShort', { targetMm: 150 }).lengthenByMm).toBeCloseTo(33.159, 2)
  })

  it('with too little engaged at full travel says how much less to travel: 59 − 45 = 14, 6 short of 20', () => {
    expect(problems({ travelMm: 45 })).toMatchObject([
      { kind: 'tooLittleEngaged', engagedMm: 14, lessTravelByMm: 6 },
    ])
  })

  it('that stands farther out than it travels says by how much', () => {
    expect(problems({ outAtPitchMm: 8, travelMm: 5 })).toMatchObject([{ kind: 'outBeyondTravel', byMm: 3 }])
  })

  // outer tubes are 17.2 + 4·0.5 = 19.2 mm wide
  it('with outer tubes that run into each other says how much farther apart they go', () => {
    expect(problem('legsTooNear', { legSpacingMm: 18 }).fartherByMm).toBeCloseTo(1.2, 9)
    const furtherPairs = [{ returnSpacingMm: 15, legSpacingMm: 38 }]
    const twice = { targetMm: 900, outerLegMm: 100, furtherPairs }
    expect(problem('legsTooNear', twice).fartherByMm).toBeCloseTo(4.2, 9)
  })

  it('with quarters wider than its legs says how much farther apart they go', () => {
    expect(problems({ quarterRadiiMm: [19, 21] })).toMatchObject([{ kind: 'legsTooNear', fartherByMm: 2 }])
  })

  it('for a bow at hand says how far its legs miss it, either way', () => {
    expect(problems({ bowAtHandRadiusMm: 17.5 })).toMatchObject([{ kind: 'legsTooFarApart', nearerByMm: 3 }])
    expect(problems({ bowAtHandRadiusMm: 20 })).toMatchObject([{ kind: 'legsTooNear', fartherByMm: 2 }])
    expect(problem('legsTooFarApart', { bowAtHandRadiusMm: 18.8 }).nearerByMm).toBeCloseTo(0.4, 9)
    expect(kinds({ bowAtHandRadiusMm: 19.1 })).toEqual([])
  })
})
