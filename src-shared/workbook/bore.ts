import type { BoreMouth, BoreSection, WaveFronts } from '../bore/section.ts'

/** A section of a design's bore as the file keeps it: with a name of its own where one was given. */
export type DesignSection = BoreSection & { readonly name?: string }

/** Where a mode of the open route should lie. */
export interface BoreTarget {
  readonly mode: number
  /** Against the harmonic of the same number of the design's fundamental, cents, sharp positive; 0 when absent. */
  readonly cents?: number
  /** In fits and in finding lengths; 1 when absent, 0 leaves the mode out. */
  readonly weight?: number
}

/** The acoustic bore of a design, lips to bell, without the loops. */
export interface Bore {
  /** Spherical when absent. */
  readonly waveFronts?: WaveFronts
  /** Unflanged when absent. */
  readonly mouth?: BoreMouth
  /**
   * Temperature at the bell's rim, °C: the air then cools along the bore by a straight line whose mean is the workbook's
   * temperature. The same everywhere when absent.
   */
  readonly bellTemperatureC?: number
  readonly sections: readonly DesignSection[]
  /** The modes that fits and found lengths aim at; modes 2 to 8 with a weight of 1 each when absent. */
  readonly targets?: readonly BoreTarget[]
  /** Weights of the harmonics 1, 2, 3 … in the weighted sum of Re Z. */
  readonly harmonicWeights?: readonly number[]
}

/** The modes aimed at when a bore names none. */
export const defaultTargets: readonly BoreTarget[] = [2, 3, 4, 5, 6, 7, 8].map((mode) => ({ mode }))
