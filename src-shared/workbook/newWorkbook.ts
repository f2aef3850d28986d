import { defaultAir } from '../air/speedOfSound.ts'
import { defaultReference } from '../pitch/reference.ts'
import type { System } from '../valves/systems/systems.ts'
import { designOpenLengthMm } from './instrumentOf.ts'
import { currentVersion, type Design, type InstrumentData, type Workbook } from './workbook.ts'

/** A workbook with no designs: A4 440, equal temperament, air at 24 °C. */
export function emptyWorkbook(name: string): Workbook {
  return {
    format: 'ferrule',
    version: currentVersion,
    name,
    reference: defaultReference,
    air: defaultAir,
    designs: [],
  }
}

/**
 * A new design of a system, its loops filled in for the instrument's effective length in the workbook's air.
 *
 * @param id unique in the workbook
 */
export function designFromSystem(
  workbook: Pick<Workbook, 'air'>,
  system: System,
  instrument: InstrumentData,
  id: string,
  name: string = system.name,
): Design {
  const bare: Design = { id, name, instrument, valves: [], loops: [] }
  const parts = system.build(designOpenLengthMm(workbook, bare))
  return { ...bare, ...parts, tuning: { kind: 'none' } }
}

/**
 * An id made from a name that no other uses: lower case, words joined with `-`, and a number when it is taken.
 *
 * @example freshId('Plain, four valves', ['plain-four-valves']) // 'plain-four-valves-2'
 */
export function freshId(name: string, taken: readonly string[]): string {
  const base = name
    .toLowerCase()
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 40)
    .replace(/^-+|-+$/g, '')
  const stem = base === '' ? 'design' : base
  if (!taken.includes(stem)) return stem
  let number = 2
  while (taken.includes(`${stem}-${number}`)) number++
  return `${stem}-${number}`
}
