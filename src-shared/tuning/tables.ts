import { fingeringsOf, type NamedFingering } from '../valves/fingerings.ts'
import { routing } from '../valves/route.ts'
import { usualFingerings } from '../valves/usual.ts'
import { type Combination, combinationTable } from './combinations.ts'
import type { Instrument } from './instrument.ts'
import { type MainSlideSetting, setMainSlide } from './mainSlide.ts'
import { type Note, noteTable } from './notes.ts'
import { once } from './once.ts'
import { type Summary, spreadOfNotes, summarise } from './summary.ts'

/** All that is derived from one instrument. */
export interface TuningTables {
  readonly mainSlide: MainSlideSetting
  readonly fingerings: readonly NamedFingering[]
  /** One for each nominal drop, the usual one: the fingerings in use. */
  readonly usual: readonly NamedFingering[]
  /** Rows of the fingerings in use, in their order. */
  readonly usualCombinations: readonly Combination[]
  readonly combinations: readonly Combination[]
  readonly notes: readonly Note[]
  readonly summary: Summary
}

/**
 * Derives the combination table, the note table and the summary of an instrument. Cost grows as fingerings ×
 * (loops + harmonics). The whole combination table, the notes, and the summary's figures by note are worked out when
 * they are first read: a curve of the fingerings in use does without.
 *
 * @example tuningTables(instrument).summary.byFingering.rmsCents
 */
export function tuningTables(instrument: Instrument): TuningTables {
  const mainSlide = setMainSlide(instrument)
  const system = routing(mainSlide.openMm, instrument.valves, instrument.loops)
  const fingerings = fingeringsOf(instrument.valves, instrument.fingerings)
  const combinations = once(() => combinationTable(mainSlide.inTuneOpenMm, system, fingerings))
  const notes = once(() => noteTable(instrument, combinations(), fingerings))
  const byNote = once(() => spreadOfNotes(notes()))
  const usual = usualFingerings(instrument.valves, fingerings)
  const usualCombinations = combinationTable(mainSlide.inTuneOpenMm, system, usual)
  const summary = summarise(system, usualCombinations)
  return {
    mainSlide,
    fingerings,
    usual,
    usualCombinations,
    get combinations() {
      return combinations()
    },
    get notes() {
      return notes()
    },
    summary: {
      ...summary,
      get byNote() {
        return byNote()
      },
    },
  }
}
