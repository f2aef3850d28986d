import { readFingering } from '#shared/bench/readings/fingeringCell.ts'
import { pastedNumber } from '#shared/bench/readings/pastedTable.ts'
import { type PastedReading, pasteReadings } from '#shared/bench/readings/pasteReadings.ts'
import { placeReading, type ReadingContext } from '#shared/bench/readings/placeReading.ts'
import { meantMidi } from '#shared/bench/readings/target.ts'
import { nominalDrop } from '#shared/valves/nominalDrop.ts'
import type { BenchReading, BenchReadings } from '#shared/workbook/bench.ts'
import type { Design, Workbook } from '#shared/workbook/workbook.ts'
import { readingsTableWords } from '../../words/benchReadingsTable.ts'

/** A reading made of what was typed, or why there is none. */
export type TypedReading = { readonly reading: BenchReading } | { readonly message: string }

/** What typed notes are understood by. */
export function contextOf(
  workbook: Workbook,
  design: Design,
  readings: BenchReadings,
  notes: 'sounding' | 'written',
): ReadingContext {
  return {
    valves: design.valves,
    fingerings: design.fingerings ?? 'all',
    open: { fundamentalHz: design.instrument.fundamentalHz, a4Hz: workbook.reference.a4Hz },
    tunerA4Hz: readings.a4Hz,
    transposition: notes === 'written' ? (design.instrument.transposition ?? 0) : 0,
  }
}

/** Reads the three cells of a row, each as it may stand in a spreadsheet. */
export function readRow(cells: readonly [string, string, string], context: ReadingContext): TypedReading {
  const [fingering, at, cents] = cells.map((cell) => cell.replaceAll('\t', ' ').trim())
  const pasted = pasteReadings(
    [fingering, at, cents].join('\t'),
    context.valves.map(({ id }) => id),
  )
  if (pasted.kind === 'refused') {
    const column = readingsTableWords.cells[pasted.column - 1] ?? readingsTableWords.row
    const found = pasted.found === '' ? readingsTableWords.nothing : readingsTableWords.quoted(pasted.found)
    return { message: readingsTableWords.refusedCell(column, found, pasted.expected) }
  }
  return placed(pasted.rows[0]!, context)
}

/** Gives a typed reading its harmonic. */
export function placed(typed: PastedReading, context: ReadingContext): TypedReading {
  const reading = placeReading(typed, context, readingsTableWords.harmonicField)
  if ('field' in reading) return { message: reading.message }
  const { pressed, harmonic, cents } = reading
  return { reading: { pressed, harmonic, cents } }
}

/** Reads many rows pasted from a spreadsheet: all, or none and why. */
export function readPaste(
  text: string,
  context: ReadingContext,
): { readonly readings: readonly BenchReading[] } | { readonly message: string } {
  const pasted = pasteReadings(
    text,
    context.valves.map(({ id }) => id),
  )
  if (pasted.kind === 'refused') return { message: pasted.message }
  const readings: BenchReading[] = []
  for (const [row, typed] of pasted.rows.entries()) {
    const answer = placed(typed, context)
    if ('message' in answer) return { message: readingsTableWords.refusedRow(row + 1, answer.message) }
    readings.push(answer.reading)
  }
  return { readings }
}

/** Reads a fingering alone; its valves, or why not. */
export function readValves(text: string, context: ReadingContext): readonly string[] | { message: string } {
  const pressed = readFingering(
    text,
    context.valves.map(({ id }) => id),
  )
  return typeof pressed === 'string' ? { message: readingsTableWords.refusedValves(text, pressed) } : pressed
}

/** Reads cents alone, with a point or a decimal comma. */
export function readCents(text: string): number | { message: string } {
  return pastedNumber(text) ?? { message: readingsTableWords.refusedCents(text) }
}

/** The midi number of the note that a reading was meant to sound, as notes are typed. */
export function noteOf({ pressed, harmonic }: BenchReading, context: ReadingContext): number {
  const semitones = nominalDrop(context.valves, context.fingerings, pressed)
  return meantMidi(context.open, semitones, harmonic) - context.transposition
}
