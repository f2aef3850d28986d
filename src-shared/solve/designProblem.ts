import { type Fingering, nameInValveOrder } from '../valves/fingering.ts'
import { fingeringsOf } from '../valves/fingerings.ts'
import { liesInRouteOf } from '../valves/gate.ts'
import type { Loop } from '../valves/loop.ts'
import type { Valve } from '../valves/valve.ts'
import type { LengthObjective, LengthProblem, SolverRow } from './lengthProblem.ts'
import { type LengthRefusal, refusal } from './lengthRefusal.ts'

/** The part of a design that lengths are found for; `fingerings` written out, the open one among them or not. */
export interface DesignToSolve {
  /** Of the open route in tune. */
  readonly openLengthMm: number
  /** How far the open route stands from that now, mm of tube; default 0. */
  readonly openChangeMm?: number
  readonly valves: readonly Valve[]
  readonly loops: readonly Loop[]
  readonly fingerings: readonly Fingering[]
}

/** What is asked of it: ids of the free loops, names of the fingerings left out. */
export interface LengthsRequest {
  readonly free: readonly string[]
  readonly openFree: boolean
  readonly leaveOut: readonly string[]
  readonly objective: LengthObjective
}

/**
 * The problem of a design's lengths: loops not named free are held, every fingering counts once, those left out
 * not at all. The open fingering counts when the open route is free, and only then, for nothing else could move it.
 * Refuses a loop or fingering that the design does not have.
 *
 * @example designProblem(design, { free: ['L1'], openFree: false, leaveOut: ['3'], objective: 'rms' })
 */
export function designProblem(
  design: DesignToSolve,
  request: LengthsRequest,
): LengthProblem | { readonly refusals: readonly LengthRefusal[] } {
  const order = design.valves.map((valve) => valve.id)
  const leftOut = request.leaveOut.map((name) => nameInValveOrder(name, order))
  const rows = designRows(design, request.openFree).map((row) =>
    leftOut.includes(row.name) || (row.name === '0' && !request.openFree) ? { ...row, weight: 0 } : row,
  )
  const refusals = [...unknownLoops(design, request), ...unknownFingerings(request, leftOut, rows)]
  if (refusals.length > 0) return { refusals }
  const free = new Set(request.free)
  return {
    openLengthMm: design.openLengthMm,
    openChangeMm: design.openChangeMm ?? 0,
    open: request.openFree ? { kind: 'free' } : { kind: 'held' },
    loops: design.loops.map((loop) => ({
      id: loop.id,
      lengthMm: loop.lengthMm,
      freedom: { kind: free.has(loop.id) ? 'free' : 'held' },
      inOpenRoute: liesInRouteOf(loop, []),
    })),
    rows,
    objective: request.objective,
  }
}

function designRows(design: DesignToSolve, openFree: boolean): readonly SolverRow[] {
  const loopsWith = (pressed: readonly string[]) =>
    design.loops.filter((loop) => liesInRouteOf(loop, pressed)).map((loop) => loop.id)
  const rows = fingeringsOf(design.valves, design.fingerings).map(({ name, semitones, pressed }) => ({
    name,
    semitones,
    loops: loopsWith(pressed),
  }))
  if (!openFree || rows.some((row) => row.name === '0')) return rows
  return [{ name: '0', semitones: 0, loops: loopsWith([]) }, ...rows]
}

function unknownLoops(design: DesignToSolve, request: LengthsRequest): readonly LengthRefusal[] {
  const known = new Set(design.loops.map((loop) => loop.id))
  return request.free.flatMap((id, at) =>
    known.has(id) ? [] : [refusal('unknownLoop', `free[${at}]`, id, 'the id of a loop of the design')],
  )
}

function unknownFingerings(
  request: LengthsRequest,
  leftOut: readonly string[],
  rows: readonly SolverRow[],
): readonly LengthRefusal[] {
  const known = new Set(['0', ...rows.map((row) => row.name)])
  return leftOut.flatMap((name, at) => {
    const found = request.leaveOut[at] ?? name
    return known.has(name)
      ? []
      : [refusal('unknownFingering', `leaveOut[${at}]`, found, 'a fingering of the design')]
  })
}
