import { centsBetween, ratioOfCents } from '../pitch/cents.ts'
import type { SlidePosition } from '../valves/loop.ts'
import type { SlideReach } from './lengthProblem.ts'

/**
 * A slide that can be moved while playing. Movement out by `p` adds `2p` of tube. It helps only fingerings
 * whose route contains its loop; `loop` absent: the main slide, which lies in every route.
 */
export interface MovableSlide extends SlidePosition {
  readonly id: string
  readonly loop?: string
}

/** A fingering to be brought to zero; `targetLengthMm` is the route at which it has no error. */
export interface PlayedRoute {
  readonly name: string
  readonly loops: readonly string[]
  readonly routeLengthMm: number
  readonly targetLengthMm: number
}

/** What the slides do for one fingering. Movements are of the slide, not tube; positive out, from where it stands. */
export interface SlideMovement {
  readonly name: string
  readonly errorCents: number
  /** Movement of one slide that would bring it to zero, travel apart. */
  readonly neededOutMm: number
  readonly moves: readonly { readonly slide: string; readonly outMm: number }[]
  /** What is left where travel runs out; 0 when it is reached. */
  readonly leftCents: number
}

/**
 * For each fingering, the movement that brings it to zero, and what is left where travel runs out. The slides
 * in a route are moved in the order given, the next one only when the one before is at its end. Tube that turns an
 * error e into zero is `route·(2^(e/1200) − 1)`, which is target less route; the movement is half of it.
 *
 * @example slideMovements(routes, [{ id: 'third', loop: 'L3', outMm: 0, travelMm: 25 }])
 */
export function slideMovements(
  routes: readonly PlayedRoute[],
  slides: readonly MovableSlide[],
): readonly SlideMovement[] {
  for (const slide of slides) checkSlide(slide)
  return routes.map((route) => {
    const neededOutMm = (route.targetLengthMm - route.routeLengthMm) / 2
    const moves: { slide: string; outMm: number }[] = []
    let stillMm = neededOutMm
    for (const slide of slidesIn(route.loops, slides)) {
      const outMm = Math.min(Math.max(stillMm, -slide.outMm), slide.travelMm - slide.outMm)
      if (outMm !== 0) moves.push({ slide: slide.id, outMm })
      stillMm -= outMm
    }
    return {
      name: route.name,
      errorCents: centsBetween(route.routeLengthMm, route.targetLengthMm),
      neededOutMm,
      moves,
      leftCents: stillMm === 0 ? 0 : centsBetween(route.targetLengthMm - 2 * stillMm, route.targetLengthMm),
    }
  })
}

/**
 * The errors, in cents, that movable slides can take away from a fingering whose route contains `loops` and
 * should be `targetLengthMm` long: sharp ones by what can still come out, flat ones by what can go in. Given to
 * the solver as a row's reach, it makes what the solver leaves of an error what `slideMovements` leaves.
 *
 * @example slideReach(['L1', 'L3'], 2669.7, [{ id: 'third', loop: 'L3', outMm: 0, travelMm: 25 }])
 */
export function slideReach(
  loops: readonly string[],
  targetLengthMm: number,
  slides: readonly MovableSlide[],
): SlideReach {
  for (const slide of slides) checkSlide(slide)
  const inRoute = slidesIn(loops, slides)
  const out = inRoute.reduce((sum, slide) => sum + slide.travelMm - slide.outMm, 0)
  const inwards = inRoute.reduce((sum, slide) => sum + slide.outMm, 0)
  if (2 * out >= targetLengthMm) {
    throw new RangeError(`Slides that add ${2 * out} mm do not suit a route of ${targetLengthMm} mm.`)
  }
  return {
    sharpCents: centsBetween(targetLengthMm - 2 * out, targetLengthMm),
    flatCents: centsBetween(targetLengthMm, targetLengthMm + 2 * inwards),
  }
}

/**
 * Length at which a fingering of a nominal drop has no error: `openLengthMm·2^(semitones/12 + offset/1200)`.
 *
 * @example targetLength(2000, 12) // 4000
 */
export function targetLength(openLengthMm: number, semitones: number, offsetCents = 0): number {
  return openLengthMm * ratioOfCents(100 * semitones + offsetCents)
}

function slidesIn(loops: readonly string[], slides: readonly MovableSlide[]): readonly MovableSlide[] {
  return slides.filter((slide) => slide.loop === undefined || loops.includes(slide.loop))
}

function checkSlide({ id, outMm, travelMm }: MovableSlide): void {
  if (!(outMm >= 0 && outMm <= travelMm && travelMm < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`Slide ${id} stands ${outMm} mm out of a travel of ${travelMm} mm.`)
  }
}
