import { describe, expect, test } from 'vitest'
import { prepareBody } from '#shared/bore/body.ts'
import { equalWeights, harmonicSum, harmonicSumCurve, playingPitches } from '#shared/bore/harmonicSum.ts'
import { impedanceAt } from '#shared/bore/inputImpedance.ts'
import { resonancesOf } from '#shared/bore/resonances.ts'
import { demand, highBore } from './bores.ts'

const body = demand(prepareBody(highBore, { temperatureC: 24 }))
const { peaks } = demand(resonancesOf(body, []))
const hz = peaks.slice(1, 6).map((peak) => peak.hz)

describe('the weighted sum of Re Z', () => {
  test('with one term is Re Z itself', () => {
    const { re } = demand(impedanceAt(body, [], [233, 300]))
    expect(demand(harmonicSum(body, [], [233, 300], [1]))).toEqual([...re])
  })

  test('takes each harmonic by its weight', () => {
    const { re } = demand(impedanceAt(body, [], [233, 466, 699]))
    const [sum] = demand(harmonicSum(body, [], [233], [2, 0, 1]))
    expect(sum! / ((2 * re[0]! + re[2]!) / 3)).toBeCloseTo(1, 12)
  })

  test('with one term has its maximum at the resonance, within three cents', () => {
    for (const pitch of demand(playingPitches(body, [], hz, [1])))
      expect(Math.abs(1200 * Math.log2(pitch.hz! / pitch.peakHz))).toBeLessThan(3)
  })

  test('its maximum is a maximum: the sum falls on both sides', () => {
    for (const pitch of demand(playingPitches(body, [], hz, equalWeights))) {
      const near = [pitch.hz! - 0.05, pitch.hz!, pitch.hz! + 0.05]
      const [left, top, right] = demand(harmonicSum(body, [], near, equalWeights)) as [number, number, number]
      expect(top).toBeGreaterThan(left)
      expect(top).toBeGreaterThan(right)
    }
  })

  test('where there is no maximum near there is no pitch', () => {
    const between = (peaks[1]!.hz + peaks[2]!.hz) / 2
    expect(demand(playingPitches(body, [], [between], [1]))).toEqual([{ peakHz: between, hz: null }])
  })

  test('as a curve is the same sum, in the samples and beyond them', () => {
    const range = { lowestHz: 200, highestHz: 600, count: 9 }
    const curve = demand(harmonicSumCurve(body, [], range, equalWeights))
    expect([curve.hz[0], curve.hz[4], curve.hz[8]]).toEqual([200, 400, 600])
    const exact = demand(harmonicSum(body, [], [...curve.hz], equalWeights))
    for (const [i, sum] of curve.sum.entries()) expect(sum / exact[i]!).toBeCloseTo(1, 3)
  })

  test.each([
    [{ lowestHz: 200, highestHz: 600, count: 1 }, 'count'],
    [{ lowestHz: 200, highestHz: 1e5, count: 9 }, 'highestHz'],
    [{ lowestHz: Number.NaN, highestHz: 600, count: 9 }, 'highestHz'],
  ])('a curve over %o is refused', (range, path) => {
    expect(harmonicSumCurve(body, [], range)).toMatchObject({ refusal: { path } })
  })

  test.each([
    ['no weights', [], 'weights'],
    ['weights of 0', [0, 0], 'weights'],
    ['a negative weight', [1, -1], 'weights[1]'],
    ['a weight that is no number', [Number.NaN], 'weights[0]'],
  ])('%s are refused', (_, weights, path) => {
    expect(harmonicSum(body, [], [233], weights)).toMatchObject({ refusal: { path } })
    expect(playingPitches(body, [], [233], weights)).toMatchObject({ refusal: { path } })
  })
})
