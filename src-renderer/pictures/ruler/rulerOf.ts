import { type TubeRuler, tubeRuler } from '#shared/tuning/tubeRuler.ts'
import type { DerivedDesign } from '../../state/derived.ts'

/** Rows drawn when every fingering is asked for: what one can still look over. */
const mostRows = 128

/** The tube ruler of a design, for its usual fingerings or for all that it has. */
export function rulerOf({ design, tables }: DerivedDesign, which: 'usual' | 'all'): TubeRuler {
  const usual = tables.usual.map(({ name }) => name)
  const byName = new Map(tables.combinations.map((row) => [row.fingering, row]))
  const rows =
    which === 'all'
      ? tables.combinations.slice(0, mostRows)
      : usual.slice(0, mostRows).flatMap((name) => byName.get(name) ?? [])
  return tubeRuler(tables.summary.bodyMm, design.loops, rows)
}
