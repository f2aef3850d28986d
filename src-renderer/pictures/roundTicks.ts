import { plainFigure } from '#shared/quantity/figures.ts'
import { unitMm } from '#shared/quantity/units.ts'
import { multiples, roundUp } from '../look/roundScale.ts'

/**
 * Round places along a scale from 0, in mm: 1, 2 or 5 times a power of ten of the unit, as close together as
 * `leastPx` allows.
 */
export function roundTicks(
  fromMm: number,
  toMm: number,
  pxPerMm: number,
  unit: 'mm' | 'in',
  leastPx: number,
): readonly number[] {
  const ofUnit = unitMm(unit)
  return multiples(roundUp(leastPx / (pxPerMm * ofUnit)) * ofUnit, fromMm, toMm)
}

/** A place on such a scale as it is written beside it. */
export function tickText(mm: number, unit: 'mm' | 'in'): string {
  const value = mm / unitMm(unit)
  return plainFigure(value, Math.abs(value - Math.round(value)) < 1e-6 ? 0 : 1)
}
