import { compensating } from '#shared/valves/systems/compensating.ts'
import type { SystemParts } from '#shared/valves/systems/parts.ts'
import { plain } from '#shared/valves/systems/plain.ts'
import { designFromSystem, emptyWorkbook } from '#shared/workbook/newWorkbook.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'

const drops = [2, 1, 3, 5, 7, 2, 1]

/** Four designs of the given number of valves, at most 7 different ones, and harmonics 1 to `last`. */
export function fourDesigns(valves: number, last: number): Workbook {
  const own = drops.slice(0, valves)
  const builds: readonly ((openLengthMm: number) => SystemParts)[] = [
    (mm) => plain(mm, own),
    (mm) => compensating(mm, own, Math.min(4, valves)),
    (mm) => compensating(mm, own, Math.min(3, valves)),
    (mm) => plain(mm * 1.01, own),
  ]
  const empty = emptyWorkbook('Four designs')
  const designs = builds.map((build, i) =>
    designFromSystem(
      empty,
      { id: '', name: `Design ${i + 1}`, description: '', family: 'plain', build },
      { fundamentalHz: 43.654, harmonics: [1, last] },
      `d${i + 1}`,
    ),
  )
  return { ...empty, designs }
}
