import { givens, rotateColumns, rotatePair } from './givens.ts'
import { type HalfSpace, slackOf } from './halfSpace.ts'

/** Below this share of a normal's length, squared, it depends on those already held. */
const dependentShare = 1e-20

/**
 * The half-spaces that hold a dual active-set method's point, and the factors that go with them: `J` with
 * `Jᵀ·matrix·J = 1`, and `R` with `Jᵀ·normals = [R; 0]`. It begins at the free minimum, holding none.
 */
export class ActiveSet {
  readonly point: Float64Array
  private readonly size: number
  private readonly j: Float64Array
  /** Column `k` of `R` stands at `k·size`. */
  private readonly r: Float64Array
  private held: number[] = []
  private multipliers: number[] = []

  /** `j` is taken over and changed. */
  constructor(j: Float64Array, gradient: Float64Array) {
    this.size = gradient.length
    this.j = j
    this.r = new Float64Array(this.size * this.size)
    this.point = this.freeMinimum(gradient)
  }

  multipliersOf(count: number): Float64Array {
    const all = new Float64Array(count)
    for (const [at, index] of this.held.entries()) all[index] = this.multipliers[at]!
    return all
  }

  /** Moves onto a half-space that is missed, letting go of those that stand in the way. False when none can. */
  add(halfSpaces: readonly HalfSpace[], index: number): boolean {
    const halfSpace = halfSpaces[index]!
    let multiplier = 0
    for (;;) {
      const projected = this.project(halfSpace)
      const dual = this.solveR(projected)
      const { blocking, reach } = this.firstBlocked(dual)
      const free = this.freePart(projected)
      const full = free > 0 ? -slackOf(halfSpace, this.point) / free : Number.POSITIVE_INFINITY
      const step = Math.min(reach, full)
      if (step === Number.POSITIVE_INFINITY) return false
      if (free > 0) this.move(projected, step)
      for (let at = 0; at < dual.length; at++) this.multipliers[at]! -= step * dual[at]!
      multiplier += step
      if (full <= reach) {
        this.hold(index, projected, multiplier)
        return true
      }
      this.letGo(blocking)
    }
  }

  private freeMinimum(gradient: Float64Array): Float64Array {
    const point = new Float64Array(this.size)
    for (let column = 0; column < this.size; column++) {
      let along = 0
      for (let row = 0; row < this.size; row++) along += this.j[row * this.size + column]! * gradient[row]!
      for (let row = 0; row < this.size; row++) point[row]! -= along * this.j[row * this.size + column]!
    }
    return point
  }

  /** `Jᵀ·normal`. */
  private project(halfSpace: HalfSpace): Float64Array {
    const projected = new Float64Array(this.size)
    for (let at = 0; at < halfSpace.columns.length; at++) {
      const row = halfSpace.columns[at]! * this.size
      const coefficient = halfSpace.sign * halfSpace.coefficients[at]!
      for (let column = 0; column < this.size; column++)
        projected[column]! += coefficient * this.j[row + column]!
    }
    return projected
  }

  /** Squared length of the normal's part that no held half-space determines; 0 when there is none. */
  private freePart(projected: Float64Array): number {
    let whole = 0
    let free = 0
    for (let at = 0; at < this.size; at++) {
      whole += projected[at]! ** 2
      if (at >= this.held.length) free += projected[at]! ** 2
    }
    return free > dependentShare * whole ? free : 0
  }

  private solveR(projected: Float64Array): number[] {
    const solved = Array.from(projected.subarray(0, this.held.length))
    for (let at = solved.length - 1; at >= 0; at--) {
      solved[at]! /= this.r[at * this.size + at]!
      for (let row = 0; row < at; row++) solved[row]! -= solved[at]! * this.r[at * this.size + row]!
    }
    return solved
  }

  private firstBlocked(dual: readonly number[]): { blocking: number; reach: number } {
    let blocking = -1
    let reach = Number.POSITIVE_INFINITY
    for (let at = 0; at < dual.length; at++) {
      const ratio = this.multipliers[at]! / dual[at]!
      if (dual[at]! > 0 && ratio < reach) {
        reach = Math.max(0, ratio)
        blocking = at
      }
    }
    return { blocking, reach }
  }

  private move(projected: Float64Array, step: number): void {
    for (let row = 0; row < this.size; row++) {
      let along = 0
      for (let column = this.held.length; column < this.size; column++) {
        along += this.j[row * this.size + column]! * projected[column]!
      }
      this.point[row]! += step * along
    }
  }

  /** Turns the free columns of `J` so that one of them alone meets the new normal. */
  private hold(index: number, projected: Float64Array, multiplier: number): void {
    const first = this.held.length
    for (let column = this.size - 1; column > first; column--) {
      const turn = givens(projected[column - 1]!, projected[column]!)
      projected[column - 1] = turn.length
      projected[column] = 0
      rotateColumns(this.j, this.size, column - 1, turn)
    }
    this.r.set(projected.subarray(0, first + 1), first * this.size)
    this.held.push(index)
    this.multipliers.push(multiplier)
  }

  /** Takes a column out of `R` and turns what is left to be triangular again. */
  private letGo(at: number): void {
    this.r.copyWithin(at * this.size, (at + 1) * this.size, this.held.length * this.size)
    this.held.splice(at, 1)
    this.multipliers.splice(at, 1)
    for (let row = at; row < this.held.length; row++) {
      const column = row * this.size
      const turn = givens(this.r[column + row]!, this.r[column + row + 1]!)
      for (let other = row; other < this.held.length; other++)
        rotatePair(this.r, other * this.size + row, turn)
      rotateColumns(this.j, this.size, row, turn)
    }
  }
}
