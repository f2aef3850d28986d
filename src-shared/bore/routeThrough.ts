import { type Body, mostInsertsPerBody } from './body.ts'
import { insertsProblem } from './checkBore.ts'
import { tableOfInserts } from './insertTable.ts'
import { accepted, type BoreResult, refused } from './refusal.ts'
import { type Route, routeAlong } from './route.ts'
import type { Insert } from './section.ts'
import type { SliceTable } from './sliceTable.ts'

/**
 * The loops of one fingering made ready, in their order from the lips. Loops in a bore without a place for them, or of
 * more than eight times the body's length, are refused.
 *
 * @example insertsFor(body, [{ lengthMm: 82.3, diameterMm: 11.66 }])
 */
export function insertsFor(body: Body, inserts: readonly Insert[]): BoreResult<SliceTable> {
  const problem = insertsProblem(inserts)
  if (problem !== undefined) return { ok: false, refusal: problem }
  const totalMm = insertedMm(inserts)
  if (totalMm > 0 && !body.waves.hasValves)
    return refused('inserts', `${totalMm} mm of loops`, 'no loops in a bore without a place for the valves')
  if (totalMm > mostInsertsPerBody * body.lengthMm)
    return refused(
      'inserts',
      `${totalMm} mm of loops`,
      `at most ${mostInsertsPerBody} times the bore's length`,
    )
  return accepted(
    tableOfInserts(inserts, {
      atM: body.waves.valvesAtM,
      boreLengthM: body.waves.lengthM,
      conditions: body.conditions,
    }),
  )
}

function insertedMm(inserts: readonly Insert[]): number {
  return inserts.reduce((sum, insert) => sum + insert.lengthMm, 0)
}

/**
 * A body with the loops of one fingering in it. Loops are refused as by `insertsFor`.
 *
 * @example routeThrough(body, [{ lengthMm: 82.3, diameterMm: 11.66 }])
 */
export function routeThrough(body: Body, inserts: readonly Insert[]): BoreResult<Route> {
  const table = insertsFor(body, inserts)
  if (!table.ok) return table
  const finer = Math.max(1, Math.ceil((insertedMm(inserts) + body.lengthMm) / (2 * body.lengthMm)))
  return accepted(routeAlong(body.sampled, table.value, finer, body.valvesWall))
}
