import { noteName } from '../../pitch/noteName.ts'
import type { Note } from '../../tuning/notes.ts'
import type { TuningTables } from '../../tuning/tables.ts'
import { namedFingering } from '../../valves/fingerings.ts'
import { valveBits } from '../../valves/gate.ts'
import { type Design, defaultHarmonics } from '../workbook.ts'
import type { Warning } from './warning.ts'

/**
 * Fingerings chosen for a note that are kept and not used: the note lies beyond what the design's fingerings reach, or
 * the fingering is not in its list.
 */
export function chosenWarnings(design: Design, tables: TuningTables, at: string): readonly Warning[] {
  const { valves, chosen = {} } = design
  const valveIds = valves.map(({ id }) => id)
  return Object.entries(chosen).flatMap(([midi, { pressed, harmonic }]) => {
    const note = tables.notes.find((each) => each.midi === Number(midi))
    if (note !== undefined && note.chosen !== null) return []
    const { name } = namedFingering(valves, valveBits(valveIds, pressed))
    const sounding = noteName(Number(midi), 'flats')
    const choice = `${name} on harmonic ${harmonic}`
    const expected =
      note === undefined ? reachWords(design, tables.notes) : 'a fingering that the design lists'
    const path = `${at}.chosen[${JSON.stringify(midi)}]`
    return [
      {
        path: note === undefined ? path : `${path}.pressed`,
        found: `${choice} for ${sounding}`,
        expected,
        message: `The fingering chosen for ${sounding}, ${choice}, is not used: expected ${expected}.`,
      },
    ]
  })
}

function reachWords({ instrument }: Design, notes: readonly Note[]): string {
  const [lowest, highest] = [notes[0], notes.at(-1)]
  if (lowest === undefined || highest === undefined) return 'a note that some fingering reaches'
  const [from, to] = [lowest, highest].map(({ midi }) => noteName(midi, 'flats'))
  const [first, last] = instrument.harmonics ?? defaultHarmonics
  return `a note from ${from} to ${to}, as far as the fingerings reach on harmonics ${first} to ${last}`
}
