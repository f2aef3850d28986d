import { describe, expect, it } from 'vitest'
import { sizeSlide } from '#shared/bench/slide/sizeSlide.ts'
import type { SlideJob } from '#shared/bench/slide/slide.ts'
import { thirdSlide } from './thirdSlide.ts'

function problems(change: Partial<SlideJob>) {
  const answer = sizeSlide({ ...thirdSlide, ...change })
  return answer.kind === 'sized' ? answer.problems : []
}
const kinds = (change: Partial<SlideJob>) => problems(change).map(({ kind }) => kind)

describe('A slide that can be built', () => {
  it('has no problems', () => expect(problems({})).toEqual([]))
  it('may have straight ends of exactly nothing', () => {
    expect(problems({ targetMm: 171 + Math.PI * 19 })).toEqual([])
  })
})

describe('A slide that cannot be built', () => {
  // 230.690 − 220 = 10.690 over, two legs: 5.345 each; legs stay above 1 + 30 + 20 = 51
  it('with too short a loop says how much shorter each outer leg must be', () => {
    const [problem, ...others] = problems({ targetMm: 220 })
    expect(problem).toMatchObject({ kind: 'negativeStraightEnd' })
    expect(problem?.kind === 'negativeStraightEnd' && problem.shortenOuterLegsByMm).toBeCloseTo(5.3451, 3)
    expect(problem?.message).toBe(
      'The parts are longer than the loop. Each outer leg must be 5.3 mm shorter.',
    )
    expect(others).toEqual([])
  })

  it('can be built once its legs are that much shorter', () => {
    const [problem] = problems({ targetMm: 220 })
    const shorterMm = problem?.kind === 'negativeStraightEnd' ? problem.shortenOuterLegsByMm : 0
    expect(problems({ targetMm: 220, outerLegMm: 60 - shorterMm })).toEqual([])
  })

  // 60 mm apart: 171 + 94.248 = 265.248, and legs may lose 9 each; at 235 mm: 15.124 an end, 6.124 over, × 4/π = 7.797
  it.each([false, true])(
    'is advised so that it can be built, bends counted acoustically or not: %s',
    (bendCorrection) => {
      const tooShort = { bendCorrection, legSpacingMm: 60, outerLegMm: 51 }
      const [, apart] = problems({ ...tooShort, targetMm: 225 })
      const nearerByMm = apart?.kind === 'legsTooFarApart' ? apart.nearerByMm : Number.NaN
      const built = sizeSlide({ ...thirdSlide, ...tooShort, targetMm: 225, legSpacingMm: 60 - nearerByMm })
      expect(built.kind === 'sized' && built.straightEndMm).toBeCloseTo(0, 6)
      const [, lacks] = problems({ ...tooShort, targetMm: 100 })
      const lengthenByMm = lacks?.kind === 'loopTooShort' ? lacks.lengthenByMm : Number.NaN
      const narrowest = { ...tooShort, legSpacingMm: 19.2, targetMm: 100 + lengthenByMm }
      const long = sizeSlide({ ...thirdSlide, ...narrowest })
      expect(long.kind === 'sized' && long.straightEndMm).toBeCloseTo(0, 6)
    },
  )

  it('with legs that cannot be shortened enough says how much nearer they must be', () => {
    const found = problems({ targetMm: 235, legSpacingMm: 60 })
    expect(found.map(({ kind }) => kind)).toEqual(['negativeStraightEnd', 'legsTooFarApart'])
    const apart = found[1]
    const nearerByMm = apart?.kind === 'legsTooFarApart' ? apart.nearerByMm : 0
    expect(nearerByMm).toBeCloseTo(7.797, 2)
    expect(problems({ targetMm: 235, legSpacingMm: 60 - nearerByMm, outerLegMm: 51 })).toEqual([])
  })

  // shortest: 39 + 2·51 + 12 + π·19.2/2 = 183.159
  it('with the shortest legs and narrowest bow still too long says what the loop lacks', () => {
    const last = problems({ targetMm: 150 }).at(-1)
    expect(last?.kind === 'loopTooShort' && last.lengthenByMm).toBeCloseTo(33.159, 2)
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
    const [problem] = problems({ legSpacingMm: 18 })
    expect(problem?.kind === 'legsTooNear' && problem.fartherByMm).toBeCloseTo(1.2, 9)
  })

  it('with quarters wider than its legs says how much farther apart they go', () => {
    expect(problems({ quarterRadiiMm: [19, 21] })).toMatchObject([{ kind: 'legsTooNear', fartherByMm: 2 }])
  })

  it('for a bow at hand says how far its legs miss it, either way', () => {
    expect(problems({ bowAtHandRadiusMm: 17.5 })).toMatchObject([{ kind: 'legsTooFarApart', nearerByMm: 3 }])
    expect(problems({ bowAtHandRadiusMm: 20 })).toMatchObject([{ kind: 'legsTooNear', fartherByMm: 2 }])
    expect(kinds({ bowAtHandRadiusMm: 19.1 })).toEqual([])
  })
})
