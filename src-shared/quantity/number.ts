import { calculationOf } from './calculation.ts'
import { type Bounds, type Refusal, readingOf, withinBounds } from './reading.ts'

/** A typed number, or why it was not taken. */
export type NumberReading = { readonly ok: true; readonly value: number } | Refusal

/** How a number field reads. */
export interface NumberOptions extends Bounds {
  /**
   * The unit of the field and other ways to type it; one of them may follow the number, in capitals or not. It
   * does not change the number.
   */
  readonly units?: readonly string[]
}

/**
 * Reads a typed number that is not a length: hertz, cents, degrees, per cent, semitones. Calculations, mixed
 * fractions and the decimal comma work as in `readLength`. Bounds are in the unit of the field. Whatever the
 * text, the answer is a finite number or a refusal.
 *
 * @example readNumber('442,5 Hz', { units: ['Hz'] }) // { ok: true, value: 442.5 }
 */
export function readNumber(text: string, options: NumberOptions = {}): NumberReading {
  const units = options.units ?? []
  return readingOf(() => {
    const { value } = calculationOf(withoutUnit(text, units), {
      wanted: `a number such as 12.5 ${units[0] ?? ''}`.trim(),
      words: units.length === 0 ? 'a number without a unit' : units.join(' or '),
    })
    return { ok: true, value: withinBounds(value, options, units[0] ?? '', text.trim()) }
  })
}

function withoutUnit(text: string, units: readonly string[]): string {
  const typed = text.trimEnd()
  const small = typed.toLowerCase()
  const isLast = (unit: string) => small.endsWith(unit.toLowerCase())
  const longest = units.filter(isLast).reduce((a, b) => (b.length > a.length ? b : a), '')
  return typed.slice(0, typed.length - longest.length)
}
