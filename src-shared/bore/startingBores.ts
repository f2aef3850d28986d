import type { BoreSection } from './section.ts'

/** An invented bore to start from. */
export interface StartingBore {
  readonly id: 'high' | 'middle' | 'low'
  readonly name: string
  /** The fundamental it was laid out for; at 24 °C modes 2 to 8 come within 30 cents of its harmonics. */
  readonly fundamentalHz: number
  readonly sections: readonly BoreSection[]
}

/**
 * A high, a middle and a low instrument, invented: copies of none, with dimensions of the usual size, lengths fitted
 * so that their modes lie near the harmonics of B♭2, B♭1 and F1.
 *
 * @example startingBores.find(({ id }) => id === 'low')?.sections
 */
export const startingBores: readonly StartingBore[] = [
  {
    id: 'high',
    name: 'High instrument in B♭',
    fundamentalHz: 116.541,
    sections: [
      { kind: 'cup', volumeMm3: 1000 },
      { kind: 'cylinder', lengthMm: 4, diameterMm: 3.7 },
      { kind: 'cone', lengthMm: 68, startDiameterMm: 3.7, endDiameterMm: 9 },
      { kind: 'cone', lengthMm: 235, startDiameterMm: 9, endDiameterMm: 11.7 },
      { kind: 'valves', diameterMm: 11.7 },
      { kind: 'cylinder', lengthMm: 525, diameterMm: 11.7 },
      { kind: 'bell', lengthMm: 560, startDiameterMm: 11.7, endDiameterMm: 124, flare: 0.68 },
    ],
  },
  {
    id: 'middle',
    name: 'Middle instrument in B♭',
    fundamentalHz: 58.27,
    sections: [
      { kind: 'cup', volumeMm3: 4800 },
      { kind: 'cylinder', lengthMm: 5, diameterMm: 6.4 },
      { kind: 'cone', lengthMm: 75, startDiameterMm: 6.4, endDiameterMm: 11.2 },
      { kind: 'cone', lengthMm: 380, startDiameterMm: 11.2, endDiameterMm: 14.6 },
      { kind: 'valves', diameterMm: 14.6 },
      { kind: 'cylinder', lengthMm: 100, diameterMm: 14.6 },
      { kind: 'cone', lengthMm: 1092, startDiameterMm: 14.6, endDiameterMm: 22 },
      { kind: 'bell', lengthMm: 1119, startDiameterMm: 22, endDiameterMm: 250, flare: 0.806 },
    ],
  },
  {
    id: 'low',
    name: 'Low instrument in F',
    fundamentalHz: 43.654,
    sections: [
      { kind: 'cup', volumeMm3: 9500 },
      { kind: 'cylinder', lengthMm: 6, diameterMm: 7.8 },
      { kind: 'cone', lengthMm: 85, startDiameterMm: 7.8, endDiameterMm: 13 },
      { kind: 'cone', lengthMm: 520, startDiameterMm: 13, endDiameterMm: 17.2 },
      { kind: 'valves', diameterMm: 17.2 },
      { kind: 'cylinder', lengthMm: 150, diameterMm: 17.2 },
      { kind: 'cone', lengthMm: 1411, startDiameterMm: 17.2, endDiameterMm: 25 },
      { kind: 'bell', lengthMm: 1549, startDiameterMm: 25, endDiameterMm: 370, flare: 0.83 },
    ],
  },
]
