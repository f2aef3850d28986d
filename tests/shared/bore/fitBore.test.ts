import { describe, expect, test } from 'vitest'
import { prepareBody } from '#shared/bore/body.ts'
import { fitBore } from '#shared/bore/fitBore.ts'
import { freeProblem } from '#shared/bore/fitQuestion.ts'
import { leastSquares } from '#shared/bore/leastSquares.ts'
import { resonancesOf } from '#shared/bore/resonances.ts'
import { startingBores } from '#shared/bore/startingBores.ts'
import { demand, highBore } from './bores.ts'

const air = { temperatureC: 24 }
const body = { section: 5, dimension: 'lengthMm', lowest: 300, highest: 800 } as const
const flare = { section: 6, dimension: 'flare', lowest: 0.5, highest: 0.9 } as const
const cup = { section: 0, dimension: 'volumeMm3', lowest: 500, highest: 2000 } as const
const modeHz = (sections = highBore) =>
  demand(resonancesOf(demand(prepareBody(sections, air)), [])).peaks.map(({ hz }) => hz)

describe('a fit of the bore', () => {
  test('finds the body length that one mode asks for', () => {
    const hz = 470
    const fitted = demand(fitBore(highBore, air, [body], [{ mode: 4, hz }]))
    expect(fitted.status).toBe('converged')
    expect(fitted.errorsCents[0]).toBeCloseTo(0, 2)
    expect(modeHz(fitted.sections.slice())[3]).toBeCloseTo(hz, 1)
  })

  test('finds the bore again from its own modes: length, flare and cup', () => {
    const targets = modeHz()
      .slice(1, 9)
      .map((hz, i) => ({ mode: i + 2, hz }))
    const start = highBore
      .with(0, { kind: 'cup', volumeMm3: 1000 })
      .with(5, { kind: 'cylinder', lengthMm: 560, diameterMm: 11.66 })
      .with(6, { kind: 'bell', lengthMm: 550, startDiameterMm: 11.66, endDiameterMm: 122, flare: 0.75 })
    const fitted = demand(fitBore(start, air, [body, flare, cup], targets))
    expect(fitted.status).toBe('converged')
    expect(fitted.values[0]).toBeCloseTo(532, 0)
    expect(fitted.values[1]).toBeCloseTo(0.7, 2)
    expect(Math.abs(fitted.values[2]! - 1200)).toBeLessThan(10)
    expect(fitted.rmsCents).toBeLessThan(0.1)
  })

  test('stops at a bound and names it', () => {
    const fitted = demand(fitBore(highBore, air, [{ ...body, lowest: 500 }], [{ mode: 4, hz: 520 }]))
    expect(fitted.values).toEqual([500])
    expect(fitted.heldByBounds).toEqual(['sections[5].lengthMm'])
    expect(fitted.errorsCents[0]).toBeLessThan(-50)
  })

  test('a mode of weight 0 is reported and does not pull', () => {
    const targets = [
      { mode: 4, hz: 470 },
      { mode: 2, hz: 300, weight: 0 },
    ]
    const fitted = demand(fitBore(highBore, air, [body], targets))
    expect(fitted.errorsCents[0]).toBeCloseTo(0, 2)
    expect(fitted.errorsCents[1]).toBeLessThan(-100)
  })

  test.each([
    ['nothing free', [], [{ mode: 4, hz: 470 }], 'free'],
    [
      'a dimension the section has not',
      [{ ...body, dimension: 'flare' as const }],
      [{ mode: 4, hz: 470 }],
      'free[0].dimension',
    ],
    ['bounds the wrong way round', [{ ...body, highest: 100 }], [{ mode: 4, hz: 470 }], 'free[0].highest'],
    ['nine free', Array.from({ length: 9 }, () => body), [{ mode: 4, hz: 470 }], 'free'],
    ['no target', [body], [], 'targets'],
    ['a target that is no number', [body], [{ mode: 4, hz: Number.NaN }], 'targets[0].hz'],
    ['a mode that is not there', [body], [{ mode: 40, hz: 4000 }], 'targets[0].mode'],
  ])('%s is refused', (_, free, targets, path) => {
    expect(fitBore(highBore, air, free, targets)).toMatchObject({ ok: false, refusal: { path } })
  })

  test('eight free are not too many', () => {
    const eight = Array.from({ length: 8 }, () => body)
    expect(freeProblem(highBore, eight)).toBeUndefined()
  })
})

describe('least squares', () => {
  test('finds the least of a curved valley', () => {
    const found = leastSquares(
      ([x, y]) => [1 - x!, 10 * (y! - x! * x!)],
      [
        { start: -1.2, lowest: -5, highest: 5 },
        { start: 1, lowest: -5, highest: 5 },
      ],
    )
    expect(found?.converged).toBe(true)
    expect(found?.values[0]).toBeCloseTo(1, 4)
    expect(found?.values[1]).toBeCloseTo(1, 4)
    expect(found?.held).toEqual([])
  })

  test('is not to be had where the start cannot be reckoned', () => {
    expect(leastSquares(() => undefined, [{ start: 0, lowest: -1, highest: 1 }])).toBeUndefined()
  })
})

describe('the starting bores', () => {
  test.each(startingBores.map((bore) => [bore.id, bore] as const))(
    '%s: modes 2 to 8 within 30 cents of the harmonics',
    (_, { sections, fundamentalHz }) => {
      const peaks = modeHz(sections)
      for (let mode = 2; mode <= 8; mode++)
        expect(Math.abs(1200 * Math.log2(peaks[mode - 1]! / (mode * fundamentalHz)))).toBeLessThan(30)
    },
  )
})
