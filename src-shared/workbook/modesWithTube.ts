import type { Body } from '../bore/body.ts'
import { accepted, type BoreResult } from '../bore/refusal.ts'
import { resonancesOf } from '../bore/resonances.ts'
import type { Insert } from '../bore/section.ts'

/**
 * Modes of a body with some loops, and some more tube of the valves' bore there, Hz; less tube when `extraMm` is below 0.
 * It is taken from the loops; what they have not to give is found from what as much more would do, for 1/f grows
 * evenly with the tube, very nearly.
 *
 * @example modesWithTube(body, [], -20, 11.66)
 */
export function modesWithTube(
  body: Body,
  inserts: readonly Insert[],
  extraMm: number,
  diameterMm: number,
): BoreResult<readonly number[]> {
  if (extraMm >= 0) return peaksHz(body, [...inserts, { lengthMm: extraMm, diameterMm }])
  let missingMm = -extraMm
  const shortened = inserts.map((insert) => {
    const takenMm = Math.min(missingMm, insert.lengthMm)
    missingMm -= takenMm
    return { ...insert, lengthMm: insert.lengthMm - takenMm }
  })
  const shortest = peaksHz(body, shortened)
  if (missingMm === 0 || !shortest.ok) return shortest
  const longer = peaksHz(body, [...shortened, { lengthMm: missingMm, diameterMm }])
  if (!longer.ok) return longer
  return accepted(shortest.value.map((hz, i) => 1 / (2 / hz - 1 / (longer.value[i] ?? hz))))
}

function peaksHz(body: Body, inserts: readonly Insert[]): BoreResult<readonly number[]> {
  const found = resonancesOf(body, inserts)
  return found.ok ? accepted(found.value.peaks.map(({ hz }) => hz)) : found
}
