import type { FingeringModes } from '#shared/bore/fingeringModes.ts'

/** One fingering in the picture of both models. */
export interface ModelsColumn {
  readonly fingering: string
  /** What the length model says of all its modes alike, cents. */
  readonly barCents: number | null
  readonly marks: readonly { readonly mode: number; readonly cents: number; readonly shallow: boolean }[]
}

/** A place where the two models differ. */
export interface Difference {
  readonly fingering: string
  readonly mode: number
  readonly cents: number
}

/**
 * The columns of the picture: what each model says against the target, or the bore's figure less the length model's.
 * Modes without a target are left out.
 */
export function modelsColumns(
  modes: readonly FingeringModes[],
  [firstMode, lastMode]: readonly [number, number],
  against: 'target' | 'lengthModel',
): readonly ModelsColumn[] {
  return modes.map(({ fingering, modes: all }) => {
    const inRange = all.filter(({ mode }) => mode >= firstMode && mode <= lastMode)
    const barCents = all.find(
      ({ lengthModelErrorCents }) => lengthModelErrorCents !== null,
    )?.lengthModelErrorCents
    return {
      fingering,
      barCents: against === 'lengthModel' ? 0 : (barCents ?? null),
      marks: inRange.flatMap(({ mode, errorCents, differenceCents, widthHz }) => {
        const cents = against === 'target' ? errorCents : differenceCents
        return cents === null ? [] : [{ mode, cents, shallow: widthHz === null }]
      }),
    }
  })
}

/** Where the models differ most among the modes from the first to the last; `null` where there is nothing to compare. */
export function largestDifference(
  modes: readonly FingeringModes[],
  [firstMode, lastMode]: readonly [number, number],
): Difference | null {
  let largest: Difference | null = null
  for (const { fingering, modes: all } of modes) {
    for (const { mode, differenceCents } of all) {
      if (mode < firstMode || mode > lastMode || differenceCents === null) continue
      if (Math.abs(differenceCents) > Math.abs(largest?.cents ?? 0))
        largest = { fingering, mode, cents: differenceCents }
    }
  }
  return largest
}
