import { fewNames } from '../../quantity/fewNames.ts'
import type { TuningTables } from '../../tuning/tables.ts'
import { gateWords, liesInRoute } from '../../valves/gate.ts'
import { routing } from '../../valves/route.ts'
import type { Design } from '../workbook.ts'
import type { Warning } from './warning.ts'

/** Combinations that fall on another note, valves and loops that no fingering uses, a main slide that cannot get there. */
export function routeWarnings(design: Design, tables: TuningTables, at: string): readonly Warning[] {
  return [
    ...fallenCombinations(tables, at),
    ...idleValves(design, tables, at),
    ...idleLoops(design, tables, at),
    ...mainSlideBeyond(tables, at),
  ]
}

function fallenCombinations(tables: TuningTables, at: string): readonly Warning[] {
  const fallen = tables.usualCombinations.filter((row) => Math.abs(row.errorCents) > 50)
  if (fallen.length === 0) return []
  const place = new Map(tables.fingerings.map(({ name }, i) => [name, i]))
  const inOrder = fallen.toSorted((a, b) => place.get(a.fingering)! - place.get(b.fingering)!)
  const names = inOrder.map(
    ({ fingering, errorCents }) =>
      `${fingering} (${errorCents > 0 ? '+' : '−'}${Math.abs(errorCents).toFixed(0)})`,
  )
  const found = fewNames(names)
  const expected = 'every usual fingering within 50 cents of its own note'
  return [
    { path: `${at}.loops`, found, expected, message: `Nearer to another note than to their own: ${found}.` },
  ]
}

/**
 * Valves that a list of fingerings of the design's own leaves out, as one that was added after it was written. Where
 * pressing one would bring a loop in, that loop is said to be idle already.
 */
function idleValves({ valves, loops }: Design, { fingerings }: TuningTables, at: string): readonly Warning[] {
  const named = new Set([...fingerings, ...loops].flatMap(({ pressed }) => pressed))
  const idle = valves.filter(({ id }) => !named.has(id)).map(({ id }) => id)
  if (idle.length === 0 || fingerings.length === 0) return []
  const found = `no fingering with valve ${idle.join(', ')}`
  const message = `No fingering of this design presses valve ${idle.join(', ')}: its list of fingerings is without ${idle.length === 1 ? 'it' : 'them'}.`
  return [{ path: `${at}.fingerings`, found, expected: 'every valve in some fingering', message }]
}

function idleLoops(design: Design, tables: TuningTables, at: string): readonly Warning[] {
  const system = routing(tables.mainSlide.openMm, design.valves, design.loops)
  return design.loops.flatMap((loop, i) => {
    const used = tables.fingerings.some(({ down }) => liesInRoute(system.gates[i]!, down))
    if (used) return []
    const found = `a loop with ${gateWords(loop)}`
    const expected = 'a gate that some fingering of the design opens'
    const message = `No fingering of this design sends the air through ${loop.name ?? loop.id} (${gateWords(loop)}).`
    return [{ path: `${at}.loops[${i}].pressed`, found, expected, message }]
  })
}

function mainSlideBeyond({ mainSlide }: TuningTables, at: string): readonly Warning[] {
  if (Math.abs(mainSlide.beyondMm) < 0.05) return []
  const short = Math.abs(mainSlide.beyondMm).toFixed(1)
  const found = `${mainSlide.movementMm.toFixed(1)} mm of movement asked for`
  const expected = 'a movement within the main slide’s travel'
  const end = mainSlide.beyondMm > 0 ? 'its travel ends' : 'it is fully in'
  return [
    {
      path: `${at}.mainSlide`,
      found,
      expected,
      message: `The main slide cannot reach the tuning note: ${end} ${short} mm too soon.`,
    },
  ]
}
