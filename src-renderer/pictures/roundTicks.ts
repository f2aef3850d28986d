import { plainFigure } from '#shared/quantity/figures.ts'

const inchMm = 25.4

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
  const unitMm = unit === 'mm' ? 1 : inchMm
  const least = leastPx / (pxPerMm * unitMm)
  const power = 10 ** Math.floor(Math.log10(least))
  const step = ([1, 2, 5, 10].find((factor) => factor * power >= least) ?? 10) * power * unitMm
  const first = Math.ceil(fromMm / step - 1e-9)
  const count = Math.floor(toMm / step + 1e-9) - first + 1
  return Array.from({ length: Math.max(0, count) }, (_, i) => (first + i) * step)
}

/** A place on such a scale as it is written beside it. */
export function tickText(mm: number, unit: 'mm' | 'in'): string {
  const value = unit === 'mm' ? mm : mm / inchMm
  return plainFigure(value, Math.abs(value - Math.round(value)) < 1e-6 ? 0 : 1)
}
