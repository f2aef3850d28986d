import { describe, expect, test } from 'vitest'
import { airOutsideStatedRange, defaultAir } from '#shared/air/speedOfSound.ts'

const fieldsOutside = (change: Partial<typeof defaultAir>) =>
  airOutsideStatedRange({ ...defaultAir, ...change }).map((outside) => outside.field)

describe('air outside the stated range', () => {
  test('is nothing for the default air', () => {
    expect(airOutsideStatedRange(defaultAir)).toEqual([])
  })

  test('is nothing at the ends of the range', () => {
    expect(fieldsOutside({ temperatureC: 0, pressurePa: 75_000 })).toEqual([])
    expect(fieldsOutside({ temperatureC: 30, pressurePa: 102_000 })).toEqual([])
  })

  test.each([
    { temperatureC: -0.5 },
    { temperatureC: 30.5 },
    { pressurePa: 74_500 },
    { pressurePa: 102_500 },
    { co2Fraction: 0.01 },
    { co2Fraction: -0.001 },
  ])('is just beyond each end: %o', (change) => {
    expect(fieldsOutside(change)).toEqual(Object.keys(change))
  })

  test('names the field, what was found and what was expected', () => {
    expect(airOutsideStatedRange({ ...defaultAir, temperatureC: 35 })).toEqual([
      { field: 'temperatureC', found: '35 °C', expected: '0 to 30 °C' },
    ])
  })

  test('names every field that is outside', () => {
    expect(fieldsOutside({ temperatureC: -1, co2Fraction: 0.04, pressurePa: 60_000 })).toEqual([
      'temperatureC',
      'co2Fraction',
      'pressurePa',
    ])
  })

  test('counts the water in hot saturated air, not the humidity alone', () => {
    expect(fieldsOutside({ temperatureC: 30, relativeHumidity: 1 })).toEqual([])
    expect(fieldsOutside({ temperatureC: 37, relativeHumidity: 1 })).toEqual([
      'temperatureC',
      'relativeHumidity',
    ])
  })

  test('writes a value that is not a number in words', () => {
    expect(airOutsideStatedRange({ ...defaultAir, co2Fraction: Number.NaN })).toEqual([
      { field: 'co2Fraction', found: 'no number', expected: '0 to less than 0.01' },
    ])
  })
})
