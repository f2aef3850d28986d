import type { LengthRefusal } from './lengthRefusal.ts'

/** Lengths that are tried: every loop's by its id, and how far the open route stands from nominal, mm of tube. */
export interface TrialLengths {
  readonly lengthsMm: Readonly<Record<string, number>>
  readonly openChangeMm: number
}

/** One note of a row (a mode of a fingering, say) as another model than that of lengths has it. */
export interface SoundedNote {
  /** Place of its row in the problem. */
  readonly row: number
  readonly name: string
  /** Weight among the notes of its row, above 0; the row's own weight comes on top. */
  readonly weight: number
  /** Error, positive sharp. */
  readonly cents: number
  /** Change of that for a millimetre more of a loop, by its id, and of the open route (`null`); 0 when not named. */
  readonly centsPerMm: ReadonlyMap<string | null, number>
}

/**
 * Another model of the errors, handed to the solver as a function, which must be smooth: all notes at some lengths, with
 * their slopes, or why it has none there. A row without notes has no part in the answer.
 */
export type Sounding = (
  trial: TrialLengths,
) => { readonly notes: readonly SoundedNote[] } | { readonly refusal: LengthRefusal }
