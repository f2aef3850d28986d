import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { defaultAir, speedOfSound } from '#shared/air/speedOfSound.ts'
import { centsBetween } from '#shared/pitch/cents.ts'

const dry = { ...defaultAir, relativeHumidity: 0 }

/** The change of pitch when the whole column goes from one temperature to another. */
function warmingCents(air: typeof defaultAir, fromC: number, toC: number): number {
  return centsBetween(
    speedOfSound({ ...air, temperatureC: fromC }),
    speedOfSound({ ...air, temperatureC: toC }),
  )
}

describe('speed of sound', () => {
  test('is 345.8665 m/s at 23 °C, 50 % humidity, sea level', () => {
    expect(speedOfSound({ ...defaultAir, temperatureC: 23 })).toBeCloseTo(345.8665, 4)
  })

  test('sharpens dry air from 70 to 90 °F by 32 cents, as a printed chart has it', () => {
    const celsius = (fahrenheit: number) => ((fahrenheit - 32) * 5) / 9
    expect(Math.abs(warmingCents(dry, celsius(70), celsius(90)) - 32)).toBeLessThan(0.5)
  })

  test('sharpens by 43 cents from 20 to 35 °C when the whole column warms that much', () => {
    expect(Math.abs(warmingCents(dry, 20, 35) - 43)).toBeLessThan(0.5)
  })

  test('gives about 3 cents a degree near the default temperature', () => {
    expect(warmingCents(defaultAir, 24, 25)).toBeCloseTo(3, 0)
  })

  test('rises with humidity and falls with carbon dioxide', () => {
    const still = speedOfSound(defaultAir)
    expect(speedOfSound({ ...defaultAir, relativeHumidity: 1 })).toBeGreaterThan(still)
    expect(speedOfSound({ ...defaultAir, co2Fraction: 0.04 })).toBeLessThan(still)
  })

  test('rises with temperature throughout the stated range', () => {
    const temperature = fc.double({ min: 0, max: 29, noNaN: true })
    const humidity = fc.double({ min: 0, max: 1, noNaN: true })
    fc.assert(
      fc.property(temperature, humidity, (temperatureC, relativeHumidity) => {
        const air = { ...defaultAir, temperatureC, relativeHumidity }
        expect(speedOfSound({ ...air, temperatureC: temperatureC + 1 })).toBeGreaterThan(speedOfSound(air))
      }),
    )
  })

  test('throws for air that is not a number or has no pressure', () => {
    expect(() => speedOfSound({ ...defaultAir, temperatureC: Number.NaN })).toThrow(RangeError)
    expect(() => speedOfSound({ ...defaultAir, pressurePa: 0 })).toThrow(RangeError)
  })
})
