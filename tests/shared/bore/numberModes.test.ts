import { describe, expect, test } from 'vitest'
import { numberModes } from '#shared/bore/numberModes.ts'

const peaks = (...frequenciesHz: number[]) =>
  frequenciesHz.map((hz) => ({ hz, heightPaSPerM3: 1e7, widthHz: 5 as number | null }))

describe('numbering the modes', () => {
  test('without a peak there is no fundamental', () => {
    expect(numberModes([])).toEqual({ nominalFundamentalHz: null, modes: [] })
  })

  test('one peak alone has a number and no fundamental to be held against', () => {
    const { nominalFundamentalHz, modes } = numberModes(peaks(80))
    expect(nominalFundamentalHz).toBeNull()
    expect(modes).toMatchObject([{ mode: 1, equivalentFundamentalHz: 80, equivalentFundamentalCents: null }])
  })

  test('mode 1, far below the pedal, does not pull the fundamental', () => {
    const { nominalFundamentalHz, modes } = numberModes(peaks(80, 233, 349.5, 466))
    expect(nominalFundamentalHz).toBeCloseTo(116.5, 10)
    expect(modes[0]!.equivalentFundamentalCents).toBeCloseTo(1200 * Math.log2(80 / 116.5), 6)
    for (const { equivalentFundamentalCents } of modes.slice(1))
      expect(equivalentFundamentalCents).toBeCloseTo(0, 6)
  })

  test('a peak without a width does not pull it either', () => {
    const [one, two, three] = peaks(80, 200, 390)
    expect(numberModes([one!, two!, { ...three!, widthHz: null }]).nominalFundamentalHz).toBeCloseTo(100, 10)
  })
})
