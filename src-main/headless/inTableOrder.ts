import { fingeringsOf } from '#shared/valves/fingerings.ts'
import type { Design } from '#shared/workbook/workbook.ts'

/** Figures by fingering in the order of the design's table: an object has names that are numbers before all others. */
export function inTableOrder(
  { valves, fingerings = 'all' }: Pick<Design, 'valves' | 'fingerings'>,
  figures: Readonly<Record<string, number>>,
): readonly (readonly [string, number])[] {
  return fingeringsOf(valves, fingerings).flatMap(({ name }) => {
    const figure = figures[name]
    return figure === undefined ? [] : [[name, figure] as const]
  })
}
