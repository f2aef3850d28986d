import type { FingeredMode } from '#shared/bore/fingeringModes.ts'
import { centsBetween, ratioOfCents } from '#shared/pitch/cents.ts'
import type { BoreTarget } from '#shared/workbook/bore.ts'

/** A mode that may be aimed at, where it should be and where it is. */
export interface TargetRow {
  readonly mode: number
  /** Whether a fit counts it. */
  readonly counts: boolean
  /** How far its target stands off the harmonic, cents. */
  readonly offsetCents: number
  readonly targetHz: number
  /** `null` where the bore has no such mode. */
  readonly hz: number | null
  readonly errorCents: number | null
}

/** The modes that may be aimed at; no more of them are offered. */
const offered = 12

/** A row for every mode on offer: harmonics of the fundamental, each with its offset, and the open route's modes. */
export function targetRows(
  targets: readonly BoreTarget[],
  fundamentalHz: number,
  modes: readonly FingeredMode[],
): readonly TargetRow[] {
  return Array.from({ length: offered }, (_, i) => {
    const mode = i + 1
    const target = targets.find((each) => each.mode === mode)
    const offsetCents = target?.cents ?? 0
    const targetHz = mode * fundamentalHz * ratioOfCents(offsetCents)
    const hz = modes[i]?.hz ?? null
    return {
      mode,
      counts: target !== undefined && target.weight !== 0,
      offsetCents,
      targetHz,
      hz,
      errorCents: hz === null ? null : centsBetween(targetHz, hz),
    }
  })
}
