import { requiredLengthMm, routeErrorCents } from '../tubing/requiredLength.ts'
import type { NamedFingering } from '../valves/fingerings.ts'
import { liesInRoute } from '../valves/gate.ts'
import type { Routing } from '../valves/route.ts'

/** One fingering's tube against what its nominal drop needs. */
export interface Combination {
  readonly fingering: string
  readonly pressed: readonly string[]
  readonly semitones: number
  /** Ids of the loops in the route, in the design's order. */
  readonly loops: readonly string[]
  /** Length of the route, mm. */
  readonly lengthMm: number
  readonly requiredLengthMm: number
  /** Positive when the route is short, and so sharp. */
  readonly errorCents: number
}

/**
 * The combination table: a row for each fingering, in the order given. Errors are relative to the open route in
 * tune: `1200·log2(required / route length)` with `required = open·2^(k/12)`.
 *
 * @param openMm effective length of the open route in tune, mm; the system's own may stand off it on purpose
 * @example combinationTable(2000, routing(2000, valves, loops), fingeringsOf(valves, 'all'))
 */
export function combinationTable(
  openMm: number,
  system: Routing,
  fingerings: readonly NamedFingering[],
): readonly Combination[] {
  const inRoute = system.loops.map(({ id }) => id)
  return fingerings.map(({ name, pressed, semitones, down }) => {
    let count = 0
    let lengthMm = system.bodyMm
    for (let i = 0; i < system.loops.length; i++) {
      if (!liesInRoute(system.gates[i]!, down)) continue
      inRoute[count++] = system.loops[i]!.id
      lengthMm += system.loops[i]!.lengthMm
    }
    const required = requiredLengthMm(openMm, semitones)
    return {
      fingering: name,
      pressed,
      semitones,
      // A list that grows item by item would hold room for many more.
      loops: inRoute.slice(0, count),
      lengthMm,
      requiredLengthMm: required,
      errorCents: routeErrorCents(required, lengthMm),
    }
  })
}
