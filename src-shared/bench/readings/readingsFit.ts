import type { Estimate } from './reading.ts'

/** A loop as the readings show it, mm of tube unless it says movement. */
export interface FittedLoop extends Estimate {
  /** Length wanted; `null` when nothing settles it. */
  readonly targetMm: number | null
  /** Tube to add; negative to take off. */
  readonly changeMm: number | null
  /** The same as movement of the loop's slide, half of it: positive is out. */
  readonly movementMm: number | null
  /** Standard error of `changeMm`; that of the movement is half. */
  readonly changeStandardErrorMm: number | null
  /**
   * What a new loop is cut to at first: the target and two standard errors of the change, or what a first cut leaves
   * over anyhow if that is more.
   */
  readonly firstCutMm: number | null
  /** Length that would put the loop's own fingering in tune with the open route; `null` when nothing settles it. */
  readonly exactMm: number | null
}

/** What readings say about an instrument. */
export interface ReadingsFit {
  readonly kind: 'fitted'
  readonly converged: boolean
  /** `null` when the readings do not settle it. */
  readonly openLengthMm: Estimate | null
  /** By loop id; a loop that was held, or that the readings do not settle, is left out. */
  readonly loops: Readonly<Record<string, FittedLoop>>
  /** By harmonic, counted from {@link ReadingsFit.referenceHarmonic}, if any, whose own is taken as given. */
  readonly harmonicOffsetsCents: Readonly<Record<string, Estimate>>
  readonly referenceHarmonic: number | null
  /** Reading less fit, in the order of the readings, those left out too. */
  readonly residualsCents: readonly number[]
  readonly fittedCents: readonly number[]
  /** Groups of names that the readings cannot tell apart. */
  readonly notToldApart: readonly (readonly string[])[]
  /** Error of one reading that the standard errors are made with: as stated, or as the residuals show if worse. */
  readonly readingErrorCents: number
  /** Readings beyond those needed: 0 when nothing checks the answer. */
  readonly degreesOfFreedom: number
  readonly remarks: readonly Remark[]
}

/** What to think of before anything is cut. `rows` are indices of readings, where some are meant. */
export interface Remark {
  readonly kind:
    | 'alike'
    | 'farOff'
    | 'disagree'
    | 'notToldApart'
    | 'unchecked'
    | 'reference'
    | 'withinDoubt'
    | 'negativeLength'
    | 'notConverged'
  readonly rows: readonly number[]
  readonly message: string
}

/** A fit before its remarks are made. */
export type BareFit = Omit<ReadingsFit, 'remarks'>
