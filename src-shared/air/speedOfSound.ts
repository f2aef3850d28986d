/** The air in the instrument, as the mean over the whole column. */
export interface Air {
  /** Mean temperature of the air column, °C: neither the room's nor the breath's. */
  readonly temperatureC: number
  /** Relative humidity, 0 to 1. */
  readonly relativeHumidity: number
  /** Mole fraction of carbon dioxide; 0.0004 outdoors, a few hundredths in breath. */
  readonly co2Fraction: number
  /** Pressure, Pa. */
  readonly pressurePa: number
}

/**
 * The air a new workbook starts with: 24 °C, half saturated, carbon dioxide as outdoors, sea level.
 *
 * @example { ...defaultAir, temperatureC: 20 }
 */
export const defaultAir: Air = {
  temperatureC: 24,
  relativeHumidity: 0.5,
  co2Fraction: 0.0004,
  pressurePa: 101325,
}

/**
 * Speed of sound in humid air, m/s, by Cramer, J. Acoust. Soc. Am. 93, 2510 (1993). Outside the range the
 * formula was stated for the value is an extrapolation; `airOutsideStatedRange` tells.
 *
 * @throws RangeError when the air has a value that no speed can be worked out from (NaN, no pressure)
 * @example speedOfSound({ temperatureC: 23, relativeHumidity: 0.5, co2Fraction: 0.0004, pressurePa: 101325 }) // 345.8665
 */
export function speedOfSound(air: Air): number {
  const t = air.temperatureC
  const p = air.pressurePa
  const xc = air.co2Fraction
  const xw = waterFraction(air)
  const speed =
    331.5024 +
    0.603055 * t -
    0.000528 * t ** 2 +
    (51.471935 + 0.1495874 * t - 0.000782 * t ** 2) * xw +
    (-1.82e-7 + 3.73e-8 * t - 2.93e-10 * t ** 2) * p +
    (-85.20931 - 0.228525 * t + 5.91e-5 * t ** 2) * xc -
    2.835149 * xw ** 2 -
    2.15e-13 * p ** 2 +
    29.179762 * xc ** 2 +
    0.000486 * xw * p * xc
  if (!(speed > 0 && speed < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`no speed of sound for ${JSON.stringify(air)}`)
  }
  return speed
}

const zeroCelsiusK = 273.15

/**
 * Mole fraction of water vapour, from relative humidity: `h · f · psv / p`, with the saturation pressure psv and
 * the enhancement factor f as Cramer, J. Acoust. Soc. Am. 93, 2510 (1993), gives them. Not finite for air
 * without pressure.
 *
 * @example waterFraction({ temperatureC: 23, relativeHumidity: 0.5, co2Fraction: 0.0004, pressurePa: 101325 }) // 0.0139
 */
export function waterFraction(air: Air): number {
  const enhancement = 1.00062 + 3.14e-8 * air.pressurePa + 5.6e-7 * air.temperatureC ** 2
  return (air.relativeHumidity * enhancement * saturationPressurePa(air.temperatureC)) / air.pressurePa
}

function saturationPressurePa(temperatureC: number): number {
  const kelvin = temperatureC + zeroCelsiusK
  return Math.exp(1.2378847e-5 * kelvin ** 2 - 1.9121316e-2 * kelvin + 33.93711047 - 6343.1645 / kelvin)
}

/** One value of the air for which the speed of sound is extrapolated. */
export interface AirOutside {
  readonly field: keyof Air
  /** The value with its unit, for people. */
  readonly found: string
  readonly expected: string
}

/**
 * The values of the air that lie outside the range which Cramer, J. Acoust. Soc. Am. 93, 2510 (1993), states for
 * the formula: 0 to 30 °C, 75 to 102 kPa, less than 0.06 of water vapour, less than 0.01 of carbon dioxide.
 * Empty when the speed of sound is not an extrapolation. Too much water is put down to `relativeHumidity`;
 * a value that is not a number lies outside.
 *
 * @example airOutsideStatedRange({ ...defaultAir, temperatureC: 35 }) // [{ field: 'temperatureC', found: '35 °C', expected: '0 to 30 °C' }]
 */
export function airOutsideStatedRange(air: Air): readonly AirOutside[] {
  const water = waterFraction(air)
  const rows: readonly (AirOutside & { readonly inside: boolean })[] = [
    {
      field: 'temperatureC',
      found: `${figure(air.temperatureC)} °C`,
      expected: '0 to 30 °C',
      inside: air.temperatureC >= 0 && air.temperatureC <= 30,
    },
    {
      field: 'relativeHumidity',
      found: `${figure(air.relativeHumidity)}, which is ${figure(water)} of water vapour`,
      expected: '0 to 1, with less than 0.06 of water vapour',
      inside: air.relativeHumidity >= 0 && air.relativeHumidity <= 1 && water < 0.06,
    },
    {
      field: 'co2Fraction',
      found: figure(air.co2Fraction),
      expected: '0 to less than 0.01',
      inside: air.co2Fraction >= 0 && air.co2Fraction < 0.01,
    },
    {
      field: 'pressurePa',
      found: `${figure(air.pressurePa)} Pa`,
      expected: '75000 to 102000 Pa',
      inside: air.pressurePa >= 75_000 && air.pressurePa <= 102_000,
    },
  ]
  return rows.filter((row) => !row.inside).map(({ field, found, expected }) => ({ field, found, expected }))
}

function figure(value: number): string {
  return Number.isFinite(value) ? String(Number(value.toPrecision(6))) : 'no number'
}
