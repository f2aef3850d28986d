import { multiples, roundUp } from '../../look/roundScale.ts'

/** Round values within a range, at most `most` of them, and the decimals they need. */
export interface Ticks {
  readonly values: readonly number[]
  readonly digits: number
}

/** Ticks at 1, 2 or 5 times a power of ten. */
export function ticksWithin(low: number, high: number, most: number): Ticks {
  const span = Math.max(high - low, 1e-9)
  const step = roundUp(span / most)
  return { values: multiples(step, low, high), digits: Math.max(0, -Math.floor(Math.log10(step) + 1e-9)) }
}

/** A range with room around its values; never narrower than `least`. */
export function roomyRange(values: readonly number[], least: number): readonly [number, number] {
  const finite = values.filter(Number.isFinite)
  const low = finite.length === 0 ? 0 : Math.min(...finite)
  const high = finite.length === 0 ? 0 : Math.max(...finite)
  const more = Math.max(0, least - (high - low)) / 2 + 0.08 * Math.max(high - low, least)
  return [low - more, high + more]
}
