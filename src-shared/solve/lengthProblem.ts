/** What is made as small as it can be: the root of the weighted mean square, or the largest weighted error. */
export type LengthObjective = 'rms' | 'largest'

/** Ends that a length may not pass, mm of tube. A loop that gives no lower end stays at 0 or above. */
export interface LengthBounds {
  readonly lowestMm?: number
  readonly highestMm?: number
}

/**
 * What may become of a loop: found within bounds, kept as it is, or kept at `factor` times another loop
 * (1 for equal loops; `2^(k/12) − 1` for a compensating loop behind a valve of k semitones). A tied loop's
 * bounds bind the loop it is tied to.
 */
export type LoopFreedom =
  | ({ readonly kind: 'free' } & LengthBounds)
  | { readonly kind: 'held' }
  | ({ readonly kind: 'tied'; readonly to: string; readonly factor: number } & LengthBounds)

/** A loop as the solver sees it. `lengthMm` is tube, as it stands now. */
export interface SolverLoop {
  readonly id: string
  readonly lengthMm: number
  readonly freedom: LoopFreedom
  /** The loop lies in the open route, whose length already contains it (an ascending valve's, say). */
  readonly inOpenRoute?: boolean
}

/** Whether the open route may be detuned, and how far: change of its length, mm of tube. */
export type OpenFreedom =
  | { readonly kind: 'held' }
  | { readonly kind: 'free'; readonly lowestChangeMm?: number; readonly highestChangeMm?: number }

/** Errors that slides moved while playing can take away: sharp ones by pulling out, flat ones by pushing in. */
export interface SlideReach {
  readonly sharpCents: number
  readonly flatCents: number
}

/**
 * A fingering, or one note of it, that the lengths are to suit. Its error is
 * `1200·log2(required / route) + offsetCents`, positive sharp, where required is `openLengthMm·2^(semitones/12)`.
 */
export interface SolverRow {
  /** Unique among the rows: the fingering's name, or a note's. */
  readonly name: string
  /** Nominal drop of the fingering. */
  readonly semitones: number
  /** Ids of the loops that lie in its route. */
  readonly loops: readonly string[]
  /** Default 1; 0 leaves the row out. Counts `weight` times in the mean square, and as `weight·|error|` in the largest. */
  readonly weight?: number
  /** Error the note has besides its combination's (harmonic, temperament); default 0. */
  readonly offsetCents?: number
  /** Default: no slide is moved. */
  readonly reach?: SlideReach
}

/** Everything that the solver is asked. Plain values; nothing in it is changed. */
export interface LengthProblem {
  /** Nominal length of the open route, from which the required lengths are taken. */
  readonly openLengthMm: number
  /** How far the open route now stands from that; default 0. */
  readonly openChangeMm?: number
  readonly open: OpenFreedom
  readonly loops: readonly SolverLoop[]
  readonly rows: readonly SolverRow[]
  readonly objective: LengthObjective
}
