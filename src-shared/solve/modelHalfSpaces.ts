import type { HalfSpace } from './halfSpace.ts'
import { naturalCents, type RouteModel } from './routeModel.ts'

/** A column's end as a half-space, and which end of which column it is. */
export interface EndHalfSpace extends HalfSpace {
  readonly column: number
  readonly side: 'lowest' | 'highest'
}

/**
 * The finite ends of a model's columns.
 *
 * @example endHalfSpaces(model).length
 */
export function endHalfSpaces(model: RouteModel): readonly EndHalfSpace[] {
  return model.columns.flatMap((column, at) => [
    ...endHalfSpace(at, 'lowest', 1, column.lowest.at),
    ...endHalfSpace(at, 'highest', -1, column.highest.at),
  ])
}

function endHalfSpace(
  column: number,
  side: EndHalfSpace['side'],
  sign: 1 | -1,
  at: number,
): readonly EndHalfSpace[] {
  return Number.isFinite(at)
    ? [{ columns: [column], coefficients: [1], sign, least: sign * at, column, side }]
    : []
}

/**
 * That no counted row's weighted error passes `capCents`, sharp or flat. For a given cap this is exact and
 * linear in the lengths: `target·2^(−cap/(1200·weight)) ≤ route ≤ target·2^(cap/(1200·weight))`.
 *
 * @example capHalfSpaces(model, 15)
 */
export function capHalfSpaces(model: RouteModel, capCents: number): readonly HalfSpace[] {
  return model.rows.flatMap((row) => {
    if (row.weight === 0) return []
    const ratio = Math.exp(capCents / (naturalCents * row.weight))
    // Written over the target, a step of 1 is a step of one cent.
    const scale = naturalCents / row.target
    const { columns } = row
    const coefficients = row.coefficients.map((coefficient) => coefficient * scale)
    const shortest = (row.target / ratio - row.tubeOut - row.constant) * scale
    const longest = (row.target * ratio + row.tubeIn - row.constant) * scale
    return [
      { columns, coefficients, sign: 1 as const, least: shortest },
      { columns, coefficients, sign: -1 as const, least: -longest },
    ].filter((halfSpace) => Number.isFinite(halfSpace.least))
  })
}
