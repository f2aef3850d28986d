import { ratioOfSemitones } from '../../pitch/cents.ts'
import type { Fingering } from '../../valves/fingering.ts'
import { switchedBy } from '../../valves/gate.ts'
import type { Loop } from '../../valves/loop.ts'
import { nominalDrop } from '../../valves/nominalDrop.ts'
import type { Valve } from '../../valves/valve.ts'
import { leastSquares } from './leastSquares.ts'

/**
 * Length of each loop over the open length that puts every loop's own fingering exactly in tune with the open
 * route: `2^(k/12) − 1` for a plain loop, `2^((ki+kk)/12) − 1` less the two loops below it for a compensating one,
 * and so on by the gates. A loop's own fingering is what it needs pressed, or what releases it when it needs
 * nothing. A fingering that the design gives a drop of its own goes by that. A loop whose length that does not
 * settle (two with the same gate, say) is left out.
 *
 * @example exactFractions([{ id: '2', semitones: 1 }], [{ id: 'L2', lengthMm: 80, pressed: ['2'] }]).get('L2') // 0.0595
 */
export function exactFractions(
  valves: readonly Valve[],
  loops: readonly Loop[],
  named: 'all' | readonly Fingering[] = 'all',
): ReadonlyMap<string, number> {
  const fingerings = loops.map(ownFingering)
  const rows = fingerings.map((pressed) => loops.map((loop) => (pressed ? switchedBy(loop, pressed) : 0)))
  const drops = fingerings.map((pressed) =>
    pressed ? ratioOfSemitones(nominalDrop(valves, named, pressed)) - 1 : 0,
  )
  const answer = leastSquares(rows, drops)
  const settled = loops.flatMap((loop, j) =>
    answer.undetermined[j]![j]! < 1e-6 ? [[loop.id, answer.solution[j]!] as const] : [],
  )
  return new Map(settled)
}

/** The fingering that a loop is made for, or `null` when its gate names none for certain. */
function ownFingering(loop: Loop): readonly string[] | null {
  if (loop.pressed.length > 0) return loop.pressed
  return loop.released?.length === 1 ? loop.released : null
}
