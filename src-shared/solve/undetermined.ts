import type { RouteModel } from './routeModel.ts'

/** Pivots below this share of the largest count as 0; coefficients are near 1. */
const zeroShare = 1e-10

/**
 * Columns that the counted rows do not determine: those in no counted route, and those that could change
 * together without changing any. Found from the null space of `coefficientsᵀ·coefficients`.
 *
 * @example undeterminedColumns(model) // [] for a plain design
 */
export function undeterminedColumns(model: RouteModel): readonly number[] {
  const size = model.columns.length
  const rows = gram(model)
  const pivotOf = new Map<number, Float64Array>()
  const zero = zeroShare * Math.max(...rows.map((row, at) => row[at]!), Number.MIN_VALUE)
  for (let column = 0; column < size; column++) {
    const pivot = takePivot(rows, column, zero)
    if (!pivot) continue
    for (const other of [...rows, ...pivotOf.values()]) clear(other, pivot, column)
    pivotOf.set(column, pivot)
  }
  const free = rows.length === 0 ? [] : allColumns(size).filter((column) => !pivotOf.has(column))
  return allColumns(size).filter((column) => {
    const pivot = pivotOf.get(column)
    return !pivot || free.some((other) => Math.abs(pivot[other]!) > 1e-7)
  })
}

function gram(model: RouteModel): Float64Array[] {
  const rows = model.columns.map(() => new Float64Array(model.columns.length))
  for (const { weight, columns, coefficients } of model.rows) {
    if (weight === 0) continue
    for (let at = 0; at < columns.length; at++) {
      const row = rows[columns[at]!]!
      for (let other = 0; other < columns.length; other++) {
        row[columns[other]!]! += coefficients[at]! * coefficients[other]!
      }
    }
  }
  return rows
}

/** Takes out of `rows` the one that is largest in `column`, scaled to 1 there. */
function takePivot(rows: Float64Array[], column: number, zero: number): Float64Array | null {
  const sizes = rows.map((row) => Math.abs(row[column]!))
  const largest = Math.max(...sizes, 0)
  if (largest <= zero) return null
  const [pivot] = rows.splice(sizes.indexOf(largest), 1)
  const lead = pivot![column]!
  return pivot!.map((value) => value / lead)
}

function clear(row: Float64Array, pivot: Float64Array, column: number): void {
  const share = row[column]!
  for (let at = 0; at < row.length; at++) row[at]! -= share * pivot[at]!
}

function allColumns(size: number): readonly number[] {
  return Array.from({ length: size }, (_, at) => at)
}
