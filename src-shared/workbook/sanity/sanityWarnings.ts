import { type AirOutside, airOutsideStatedRange } from '../../air/speedOfSound.ts'
import type { TuningTables } from '../../tuning/tables.ts'
import { playedAir } from '../instrumentOf.ts'
import type { Design, WorkbookAir } from '../workbook.ts'
import { boreWarnings } from './boreWarnings.ts'
import { chosenWarnings } from './chosenWarnings.ts'
import { instrumentWarnings } from './instrumentWarnings.ts'
import { loopWarnings } from './loopWarnings.ts'
import { routeWarnings } from './routeWarnings.ts'
import { slideInLoopWarnings } from './slideInLoopWarnings.ts'
import { slideWarnings } from './slideWarnings.ts'
import type { Warning } from './warning.ts'

/**
 * What looks like a slip in a workbook's own values: air, as designed or as played, outside the range that the
 * formula for its speed of sound is stated for.
 */
export function airWarnings(air: WorkbookAir): readonly Warning[] {
  const designed = airOutsideStatedRange(air).map((outside) => airWarning(outside.field, outside))
  if (air.playingTemperatureC === undefined) return designed
  const played = airOutsideStatedRange(playedAir(air))
    .filter(({ field }) => field === 'temperatureC')
    .map((outside) => airWarning('playingTemperatureC', outside))
  return [...designed, ...played]
}

function airWarning(field: keyof WorkbookAir, { found, expected }: AirOutside): Warning {
  return {
    path: `air.${field}`,
    found,
    expected,
    message: `The speed of sound is extrapolated: found ${found}, expected ${expected}.`,
  }
}

/**
 * What looks like a slip in one design.
 *
 * @param tables the design's own tables
 * @param index its place in the workbook, for the paths
 */
export function designWarnings(design: Design, tables: TuningTables, index: number): readonly Warning[] {
  const at = `designs[${index}]`
  const openMm = tables.mainSlide.nominalOpenMm
  return [
    ...instrumentWarnings(design, openMm, at),
    ...boreWarnings(design, openMm, at),
    ...loopWarnings(design, openMm, at),
    ...slideWarnings(design, at),
    ...slideInLoopWarnings(design, at),
    ...routeWarnings(design, tables, at),
    ...chosenWarnings(design, tables, at),
  ]
}
