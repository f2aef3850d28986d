import { useMemo } from 'react'
import { speedOfSound } from '#shared/air/speedOfSound.ts'
import { centsBetween } from '#shared/pitch/cents.ts'
import type { PlayedRoute } from '#shared/solve/slideMovement.ts'
import {
  type DesignedRoute,
  type MadeWithin,
  type TemperatureEffect,
  type ToleranceBand,
  toleranceBands,
} from '#shared/solve/toleranceBands.ts'
import type { WorkbookAir } from '#shared/workbook/workbook.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { type DoubtChoices, useLengths } from '../state/lengthsStore.ts'
import { useWorkbook } from '../state/workbookStore.ts'

/** What is doubted, with the air that it is doubted against. */
export interface Doubts {
  readonly choices: DoubtChoices
  readonly air: WorkbookAir | null
}

export function useDoubt(): Doubts {
  const choices = useLengths((state) => state.doubt)
  const air = useWorkbook((state) => state.workbook?.air ?? null)
  return useMemo(() => ({ choices, air }), [choices, air])
}

/** ± mm of the body and of every loop of a design. */
export function madeWithin({ design }: DerivedDesign, { bodyMm, loopMm, ownMm }: DoubtChoices): MadeWithin {
  const own = ownMm.get(design.id)
  const loopsMm = Object.fromEntries(design.loops.map(({ id }) => [id, own?.get(id) ?? loopMm]))
  return { bodyMm, loopsMm }
}

/** What the coldest and the warmest air do to the whole instrument. */
export function temperatureEffect({ choices, air }: Doubts): TemperatureEffect {
  if (air === null) return { lowestCents: 0, highestCents: 0 }
  const at = (temperatureC: number | null): number =>
    temperatureC === null ? 0 : centsBetween(speedOfSound(air), speedOfSound({ ...air, temperatureC }))
  const ends = [at(choices.coldestC), at(choices.warmestC)]
  return { lowestCents: Math.min(...ends), highestCents: Math.max(...ends) }
}

/** Routes as they are designed, with the errors that they have. */
export function designedRoutes(routes: readonly PlayedRoute[]): readonly DesignedRoute[] {
  return routes.map(({ name, loops, routeLengthMm, targetLengthMm }) => ({
    name,
    loops,
    routeLengthMm,
    errorCents: centsBetween(routeLengthMm, targetLengthMm),
  }))
}

/** Where each fingering may come to lie; `null` when the tolerances would use up a route. */
export function bandsOf(
  derived: DerivedDesign,
  routes: readonly PlayedRoute[],
  doubts: Doubts,
): readonly ToleranceBand[] | null {
  const made = madeWithin(derived, doubts.choices)
  const usedUp = routes.some(({ loops, routeLengthMm }) => {
    const wholeMm = loops.reduce((sum, id) => sum + (made.loopsMm[id] ?? 0), made.bodyMm)
    return wholeMm >= routeLengthMm
  })
  if (usedUp) return null
  const { readingErrorCents } = doubts.choices
  return toleranceBands(designedRoutes(routes), made, temperatureEffect(doubts), readingErrorCents)
}
