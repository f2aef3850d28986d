import type { AirMeasures } from '#shared/valves/air/airLayout.ts'

/** Measures for a drawing in round numbers. */
export const measures: AirMeasures = {
  bow: 10,
  loopGap: 12,
  valveGap: 40,
  casing: 16,
  cheek: 9,
  longestLeg: 150,
  passGap: 80,
  wordRoom: 40,
  ends: 60,
}
