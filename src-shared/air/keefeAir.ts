/** What the acoustic bore needs to know of the air in it. SI units. */
export interface BoreAir {
  readonly densityKgPerM3: number
  readonly speedMPerS: number
  readonly viscosityPaS: number
  /** Ratio of the heat capacities, γ. */
  readonly heatCapacityRatio: number
  /** Square root of the Prandtl number, ν. */
  readonly sqrtPrandtl: number
}

/**
 * Density, speed of sound, viscosity, γ and ν of air at a temperature in °C.
 *
 * Keefe, J. Acoust. Soc. Am. 75, 58 (1984): straight lines about 26.85 °C, stated for ten degrees either side and
 * used here a little beyond. The speed differs by a few cents from the length model's, so compare intervals.
 * A temperature that is not finite gives figures that are not finite: check it first.
 *
 * @example keefeAir(26.85).speedMPerS // 347.23
 */
export function keefeAir(temperatureC: number): BoreAir {
  const offset = temperatureC - 26.85
  return {
    densityKgPerM3: 1.1769 * (1 - 0.00335 * offset),
    speedMPerS: 347.23 * (1 + 0.00166 * offset),
    viscosityPaS: 1.846e-5 * (1 + 0.0025 * offset),
    heatCapacityRatio: 1.4017 * (1 - 0.00002 * offset),
    sqrtPrandtl: 0.841 * (1 - 0.0002 * offset),
  }
}
