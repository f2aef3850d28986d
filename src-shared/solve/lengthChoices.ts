import { type DesignToSolve, designProblem } from './designProblem.ts'
import type { LengthObjective, LengthProblem, LoopFreedom, OpenFreedom, SolverRow } from './lengthProblem.ts'
import { type LengthRefusal, refusal } from './lengthRefusal.ts'
import { type MovableSlide, slideReach, targetLength } from './slideMovement.ts'

/** Everything that a person can choose about finding a design's lengths. */
export interface LengthChoices {
  readonly objective: LengthObjective
  readonly open: OpenFreedom
  /** By loop id; a loop that is not named is free. */
  readonly freedoms: ReadonlyMap<string, LoopFreedom>
  /** By fingering name; one that is not named counts once, and 0 leaves it out. */
  readonly weights: ReadonlyMap<string, number>
  /** Slides moved while playing: an error that they reach counts as none. */
  readonly slides: readonly MovableSlide[]
}

const free: LoopFreedom = { kind: 'free' }

/**
 * The problem of a design's lengths under some choices. The open fingering counts when the open route is free,
 * and only then, for nothing else could move it. Refuses slides whose travel would use up the route they are in;
 * what else is wrong with the choices is refused when they are solved.
 *
 * @example chosenProblem(design, { objective: 'rms', open: { kind: 'held' }, freedoms: new Map(), weights: new Map(), slides: [] })
 */
export function chosenProblem(
  design: DesignToSolve,
  choices: LengthChoices,
): LengthProblem | { readonly refusals: readonly LengthRefusal[] } {
  const { objective, open, freedoms } = choices
  const plain = designProblem(design, { free: [], openFree: open.kind === 'free', leaveOut: [], objective })
  if ('refusals' in plain) return plain
  const rows = plain.rows.map((row, at) => chosenRow(plain.openLengthMm, row, `rows[${at}]`, choices))
  const refusals = rows.flatMap((row) => ('kind' in row ? [row] : []))
  if (refusals.length > 0) return { refusals }
  return {
    ...plain,
    open,
    loops: plain.loops.map((loop) => ({ ...loop, freedom: freedoms.get(loop.id) ?? free })),
    rows: rows.flatMap((row) => ('kind' in row ? [] : [row])),
  }
}

function chosenRow(
  openLengthMm: number,
  row: SolverRow,
  path: string,
  { weights, slides }: LengthChoices,
): SolverRow | LengthRefusal {
  const weight = row.weight === 0 ? 0 : (weights.get(row.name) ?? 1)
  if (slides.length === 0) return { ...row, weight }
  const targetMm = targetLength(openLengthMm, row.semitones)
  const addedMm = slides
    .filter(({ loop }) => loop === undefined || row.loops.includes(loop))
    .reduce((sum, { travelMm, outMm }) => sum + 2 * (travelMm - outMm), 0)
  if (addedMm >= targetMm) {
    return refusal('outOfRange', `${path}.reach`, `${addedMm} mm of slides`, `less than ${targetMm} mm`)
  }
  return { ...row, weight, reach: slideReach(row.loops, targetMm, slides) }
}
