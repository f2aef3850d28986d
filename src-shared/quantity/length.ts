import { calculationOf } from './calculation.ts'
import { type Bounds, type Refusal, Refused, readingOf, withinBounds } from './reading.ts'
import { inch, inMillimetres, millimetre } from './units.ts'

/** A typed length: millimetres, or why it was not taken. */
export type Reading = { readonly ok: true; readonly mm: number } | Refusal

/** How a length field reads. The unit of bare numbers is millimetres unless told. */
export interface LengthOptions extends Bounds {
  readonly defaultUnit?: 'mm' | 'in'
}

const bareUnits = { mm: millimetre, in: inch } as const

/**
 * Reads a typed length: a number (`62.5`, `12,5`), a fraction (`1 3/16`), with a unit (µm, mm, cm, m, in, ft,
 * thou) or the marks `'` and `"`, or a calculation with them (`2*62.5 + pi*19`, `sqrt(3) * 2 cm`).
 *
 * Bare numbers are in the default unit. A bare number added to a length is taken only where every unit typed is
 * the default one. What could mean two things is refused, never guessed: `1,000`, `2 ft 3`, `9-1/2`, `5 + 2 in`
 * in a field of millimetres. Lengths below 0 are taken unless `atLeast` says otherwise; bounds are in mm.
 * Whatever the text, the answer is a finite number or a refusal.
 *
 * @example readLength('2 ft 9 in') // { ok: true, mm: 838.2 }
 * @example readLength('1 3/16', { defaultUnit: 'in' }) // { ok: true, mm: 30.1625 }
 */
export function readLength(text: string, options: LengthOptions = {}): Reading {
  return readingOf(() => {
    const bareUnit = bareUnits[options.defaultUnit ?? 'mm']
    const { value, power, units } = calculationOf(text, { wanted, words, bareUnit })
    const isBare = power === 0 && units.length === 0
    if (!isBare && power !== 1) throw new Refused('dimension', text.trim(), wanted)
    const mm = isBare ? inMillimetres(value, bareUnit) : value
    const unit = options.defaultUnit ?? 'mm'
    return { ok: true, mm: withinBounds(mm, options, unit, text.trim(), inMillimetres(1, bareUnit)) }
  })
}

const wanted = 'a length such as 12.5 mm, 1 3/16 in or 2*62.5 + pi*19'
const words = 'mm, cm, m, µm, in, ft or thou, in small letters'
