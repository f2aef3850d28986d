import type { Estimate } from './reading.ts'
import type { FittedLoop, ReadingsFit, Remark } from './readingsFit.ts'

/** A fit as the headless command writes it, apart from its id. */
export interface ReadingsRecord {
  readonly openLengthMm: Estimate | null
  readonly loops: Readonly<
    Record<string, Pick<FittedLoop, 'value' | 'standardError' | 'changeMm' | 'movementMm'>>
  >
  readonly harmonicOffsetsCents: Readonly<Record<string, number>>
  readonly residualsCents: readonly number[]
  readonly remarks: readonly Remark[]
}

/** The headless record of a fit. */
export function readingsRecord(fit: ReadingsFit): ReadingsRecord {
  const loops = Object.entries(fit.loops).map(([id, { value, standardError, changeMm, movementMm }]) => [
    id,
    { value, standardError, changeMm, movementMm },
  ])
  const offsets = Object.entries(fit.harmonicOffsetsCents).map(([harmonic, { value }]) => [harmonic, value])
  return {
    openLengthMm: fit.openLengthMm,
    loops: Object.fromEntries(loops),
    harmonicOffsetsCents: Object.fromEntries(offsets),
    residualsCents: fit.residualsCents,
    remarks: fit.remarks,
  }
}
