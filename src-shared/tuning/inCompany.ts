import { routeErrorCents } from '../tubing/requiredLength.ts'
import { namedFingering } from '../valves/fingerings.ts'
import { bitsOf, type Routing } from '../valves/route.ts'
import type { Valve } from '../valves/valve.ts'
import { type Combination, combinationTable } from './combinations.ts'

/** A fingering of several valves, taken apart: the last valve added to the company of the others. */
export interface InCompany {
  readonly open: Combination
  /** The last valve by itself. */
  readonly alone: Combination
  /** The other valves without it. */
  readonly company: Combination
  readonly together: Combination
  /** What the last valve adds to the open instrument, mm. */
  readonly addedAloneMm: number
  /** What the same drop needs on the instrument as the company leaves it in tune, mm. */
  readonly neededInCompanyMm: number
  /** Loops that lie in the route only when all are down: what a compensating system adds. */
  readonly further: readonly string[]
  readonly furtherMm: number
  /** Loops of the last valve or of the others that drop out when all are down. */
  readonly gone: readonly string[]
  /** Tube that is missing before the further loops are counted, mm; negative when there is too much. */
  readonly missingBeforeMm: number
  readonly errorBeforeCents: number
  /** Tube that is missing in the end, mm. */
  readonly missingMm: number
}

/**
 * Takes a fingering apart into its last valve and the company of the others.
 *
 * @param openMm effective length of the open route in tune, mm
 * @param pressed two valves or more, in the design's order
 * @param semitones nominal drop of the fingering; the valves' sum when absent
 * @throws RangeError for fewer than two valves
 * @example inCompany(2000, system, valves, ['1', '3']).missingMm // 46.3 on a plain system
 */
export function inCompany(
  openMm: number,
  system: Routing,
  valves: readonly Valve[],
  pressed: readonly string[],
  semitones?: number,
): InCompany {
  if (pressed.length < 2) throw new RangeError('company takes two valves')
  const row = (ids: readonly string[], drop?: number): Combination =>
    combinationTable(openMm, system, [namedFingering(valves, bitsOf(system, ids), drop)])[0]!
  const open = row([])
  const alone = row(pressed.slice(-1))
  const company = row(pressed.slice(0, -1))
  const together = row(pressed, semitones)
  const apart = [...alone.loops, ...company.loops]
  const further = together.loops.filter((id) => !apart.includes(id))
  const furtherMm = tubeOf(system, further)
  const beforeMm = together.lengthMm - furtherMm
  return {
    open,
    alone,
    company,
    together,
    addedAloneMm: alone.lengthMm - open.lengthMm,
    neededInCompanyMm: together.requiredLengthMm - company.requiredLengthMm,
    further,
    furtherMm,
    gone: apart.filter((id) => !together.loops.includes(id) && !open.loops.includes(id)),
    missingBeforeMm: together.requiredLengthMm - beforeMm,
    errorBeforeCents: routeErrorCents(together.requiredLengthMm, beforeMm),
    missingMm: together.requiredLengthMm - together.lengthMm,
  }
}

function tubeOf(system: Routing, ids: readonly string[]): number {
  return system.loops.reduce((sum, loop) => (ids.includes(loop.id) ? sum + loop.lengthMm : sum), 0)
}
