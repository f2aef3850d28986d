import type { BoreResult } from '#shared/bore/refusal.ts'
import type { BoreSection } from '#shared/bore/section.ts'

/** The value of a result that must hold one. */
export function demand<Value>(result: BoreResult<Value>): Value {
  if (!result.ok) throw new Error(`${result.refusal.path}: ${result.refusal.found}`)
  return result.value
}

/** The invented high instrument of the reference figures. */
export const highBore: readonly BoreSection[] = [
  { kind: 'cup', volumeMm3: 1200 },
  { kind: 'cylinder', lengthMm: 3, diameterMm: 3.66 },
  { kind: 'cone', lengthMm: 70, startDiameterMm: 3.66, endDiameterMm: 8.8 },
  { kind: 'cone', lengthMm: 240, startDiameterMm: 8.8, endDiameterMm: 11.66 },
  { kind: 'valves', diameterMm: 11.66 },
  { kind: 'cylinder', lengthMm: 532, diameterMm: 11.66 },
  { kind: 'bell', lengthMm: 550, startDiameterMm: 11.66, endDiameterMm: 122, flare: 0.7 },
]
