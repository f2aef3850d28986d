import type { DesignToSolve } from '#shared/solve/designProblem.ts'
import type { LengthsAndErrors } from '#shared/solve/lengthAnswer.ts'
import type { LengthProblem } from '#shared/solve/lengthProblem.ts'
import { type MovableSlide, type PlayedRoute, slideMovements } from '#shared/solve/slideMovement.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { mainSlideId } from '../state/lengthsStore.ts'

/** A design as the solver takes it, its open route where the main slide has it. */
export function designToSolve({ design, tables }: DerivedDesign): DesignToSolve {
  const { inTuneOpenMm, openMm } = tables.mainSlide
  return {
    openLengthMm: inTuneOpenMm,
    openChangeMm: openMm - inTuneOpenMm,
    valves: design.valves,
    loops: design.loops,
    fingerings: tables.fingerings,
  }
}

/**
 * Every slide of a design, moved while playing or not; one without a travel has none to give, and one that stands
 * beyond its travel, which the warnings name, only goes in.
 */
export function slidesOf({ design, tables }: DerivedDesign): readonly MovableSlide[] {
  const loops = design.loops.flatMap(({ id, slide }) =>
    slide === undefined
      ? []
      : [{ id, loop: id, outMm: slide.outMm, travelMm: Math.max(slide.outMm, slide.travelMm) }],
  )
  const { mainSlide } = design
  if (mainSlide === undefined) return loops
  const outMm = Math.min(Math.max(mainSlide.outMm + tables.mainSlide.movementMm, 0), mainSlide.travelMm)
  return [...loops, { id: mainSlideId, outMm, travelMm: mainSlide.travelMm }]
}

/** The slides of a design that are moved while playing. */
export function movedSlides(derived: DerivedDesign, moved: ReadonlySet<string> | undefined) {
  return slidesOf(derived).filter(({ id }) => moved?.has(id) ?? false)
}

/** The routes of a design as it stands. */
export function presentRoutes({ tables }: DerivedDesign): readonly PlayedRoute[] {
  return tables.combinations.map(({ fingering, loops, lengthMm, requiredLengthMm }) => ({
    name: fingering,
    loops,
    routeLengthMm: lengthMm,
    targetLengthMm: requiredLengthMm,
  }))
}

/** The routes of a proposal. */
export function proposedRoutes(problem: LengthProblem, proposal: LengthsAndErrors): readonly PlayedRoute[] {
  const loopsOf = new Map(problem.rows.map(({ name, loops }) => [name, loops]))
  return proposal.rows.map(({ name, routeLengthMm, targetLengthMm }) => ({
    name,
    loops: loopsOf.get(name) ?? [],
    routeLengthMm,
    targetLengthMm,
  }))
}

/** What is left of each fingering's error when the slides have done what they can, by its name. */
export function leftByFingering(
  routes: readonly PlayedRoute[],
  slides: readonly MovableSlide[],
): ReadonlyMap<string, number> {
  return new Map(slideMovements(routes, slides).map(({ name, leftCents }) => [name, leftCents]))
}

/** Weighted rms and the largest of some errors, where every weight is at least 0. */
export interface Reached {
  readonly rmsCents: number
  readonly largestCents: number
  /** `null` when nothing counts. */
  readonly largestAt: string | null
  /** The note of it, where a fingering has several. */
  readonly largestNote?: string | null
}

/** What some lengths reach over the rows that count. */
export function reachedBy(problem: LengthProblem, cents: ReadonlyMap<string, number>): Reached {
  let [squares, weights, largestCents] = [0, 0, 0]
  let largestAt: string | null = null
  for (const { name, weight = 1 } of problem.rows) {
    const error = cents.get(name)
    if (weight === 0 || error === undefined) continue
    squares += weight * error * error
    weights += weight
    if (largestAt !== null && Math.abs(error) <= Math.abs(largestCents)) continue
    largestCents = error
    largestAt = name
  }
  return { rmsCents: weights === 0 ? 0 : Math.sqrt(squares / weights), largestCents, largestAt }
}
