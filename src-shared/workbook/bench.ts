import type { FurtherPair } from '../bench/slide/slide.ts'

/** What the bench pages keep in a workbook: jobs, each under an id that is also its name. */
export interface Bench {
  readonly slides?: readonly BenchSlide[]
  readonly readings?: readonly BenchReadings[]
  readonly pitchChanges?: readonly BenchPitchChange[]
}

/** The lists of jobs, by their key in the file. */
export interface BenchLists {
  readonly slides: BenchSlide
  readonly readings: BenchReadings
  readonly pitchChanges: BenchPitchChange
}
/** The key of one list of jobs in the file. */
export type BenchList = keyof BenchLists

/** Every list of jobs, in the order of the bench. */
export const benchLists: readonly BenchList[] = ['slides', 'readings', 'pitchChanges']

/**
 * A slide to be made for a loop of a design: its target is the loop's length there. Lengths in mm along the centre
 * line; `outAtPitchMm` and `travelMm` are movement. What is absent is as in `slideDefaults`.
 */
export interface BenchSlide {
  readonly id: string
  /** Ids of a design and of a loop in it; either may have gone since. */
  readonly design: string
  readonly loop: string
  readonly legSpacingMm: number
  readonly outerLegMm: number
  readonly knucklesMm: number
  readonly passagesMm: number
  readonly straightPassageMm: number
  readonly boreDiameterMm: number
  readonly wallMm?: number
  readonly outAtPitchMm?: number
  readonly travelMm?: number
  readonly stopGapMm?: number
  readonly leastEngagedMm?: number
  readonly trimMm?: number
  readonly densityGPerCm3?: number
  readonly bendCorrection?: boolean
  readonly toleranceMm?: number
  readonly quarterRadiiMm?: readonly [number, number]
  readonly furtherPairs?: readonly FurtherPair[]
  readonly bowAtHandRadiusMm?: number
  /** For the sheet. */
  readonly notes?: string
}

/** A tuner's readings of a design. */
export interface BenchReadings {
  readonly id: string
  readonly design: string
  /** That the tuner was set to, Hz. */
  readonly a4Hz: number
  readonly rows: readonly BenchReading[]
  /** Standard error of one reading, cents. */
  readonly readingErrorCents?: number
  /** The design's open length is known, not asked for. */
  readonly openHeld?: boolean
  /** The design's harmonic offsets are known, not asked for. */
  readonly offsetsHeld?: boolean
  /** Each loop is wanted exact for its own fingering, not as the design has it. */
  readonly exactWanted?: boolean
  /** For the sheet. */
  readonly notes?: string
}

/** One reading: valves pressed, harmonic, and cents that the tuner showed, sharp positive. */
export interface BenchReading {
  readonly pressed: readonly string[]
  readonly harmonic: number
  readonly cents: number
  /** Kept in the table, out of the fit. */
  readonly leaveOut?: boolean
}

/** A change of a design's pitch, from one A4 to another, Hz. */
export interface BenchPitchChange {
  readonly id: string
  readonly design: string
  readonly fromA4Hz: number
  readonly toA4Hz: number
  /** For the sheet. */
  readonly notes?: string
}
