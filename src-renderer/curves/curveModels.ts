import { noteName, type Spelling } from '#shared/pitch/noteName.ts'
import { signedFigure } from '#shared/quantity/figures.ts'
import type { Candidate } from '#shared/tuning/candidates.ts'
import { playedCandidate } from '#shared/tuning/notes.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { keptFor } from '../state/keptFor.ts'
import type { Selection } from '../state/viewStore.ts'
import { curvesWords as words } from '../words/curves.ts'
import { lineUpWords } from '../words/lineUp.ts'
import type { ChartModel } from './chartModel.ts'

/** A chart and the table under it: the same data, with what each cell selects. */
export interface CurvesModel extends ChartModel {
  /** Selections by series and category; `null` where there is no value. */
  readonly cells: readonly (readonly (Selection | null)[])[]
  /** What the first column of the table is. */
  readonly heading: string
  /** Categories left out because they are too many to draw. */
  readonly leftOut: number
  /** By design, the notes within its compass that none of its fingerings comes near. */
  readonly unreached: readonly { readonly design: string; readonly notes: readonly string[] }[]
}

/** A category of one design, before those of several are lined up. */
interface Place {
  readonly key: string
  /** Where the category stands along the axis. */
  readonly order: number
  readonly label: string
  /** What is left of the label where there is little room. */
  readonly short?: string
}

interface Cell extends Place {
  readonly cents: number
  readonly note: string | null
  readonly selection: Selection
}

/** A design's cells, in its order and by key, and its places, some of which may hold no cell. */
interface Row {
  readonly cells: readonly Cell[]
  readonly places: readonly Place[]
  readonly byKey: ReadonlyMap<string, Cell>
}

function rowOf(cells: readonly Cell[], places: readonly Place[] = cells): Row {
  return { cells, places, byKey: new Map(cells.map((cell) => [cell.key, cell])) }
}

// Of several designs the hand changes one: the rows of the others are there already.
const usualRow = keptFor((derived: DerivedDesign) => rowOf(usualCells(derived)))
const rowBySemitones = keptFor((derived: DerivedDesign) => rowOf(usualCells(derived).map(bySemitones)))
const everyRow = keptFor((derived: DerivedDesign) => rowOf(allCells(derived)))

/** Errors by fingering: the usual one for each nominal drop, or every fingering of every design. */
export function curvesByFingering(
  designs: readonly DerivedDesign[],
  selectedId: string | null,
  which: 'usual' | 'all',
  bandCents: number,
): CurvesModel {
  const usual = designs.map(usualRow)
  const isMixed = which === 'usual' && fingeredApart(usual)
  const rows = which === 'all' ? designs.map(everyRow) : isMixed ? designs.map(rowBySemitones) : usual
  const model = assembled(designs, rows, selectedId, bandCents)
  const steps = isMixed ? words.columns.semitones : words.columns.step
  return {
    ...model,
    title: words.titles.fingering,
    heading: which === 'usual' ? steps : words.columns.fingering,
    unreached: [],
  }
}

/** Whether designs have other fingerings for a step, or other steps for a fingering: neither stands for the other. */
function fingeredApart(rows: readonly Row[]): boolean {
  const [labels, keys] = [new Map<string, string>(), new Map<string, string>()]
  for (const { cells } of rows) {
    for (const { key, label } of cells) {
      if ((labels.get(key) ?? label) !== label || (keys.get(label) ?? key) !== key) return true
      labels.set(key, label)
      keys.set(label, key)
    }
  }
  return false
}

/** A cell under its step in semitones from the open route, up positive. */
function bySemitones(cell: Cell): Cell {
  return { ...cell, label: signedFigure(-cell.order, Number.isInteger(cell.order) ? 0 : 2) }
}

/** Errors by note over the compass, each note with the fingering that counts for it. */
export function curvesByNote(
  designs: readonly DerivedDesign[],
  selectedId: string | null,
  spelling: Spelling,
  bandCents: number,
): CurvesModel {
  const rows = designs.map((derived) => rowOf(noteCells(derived, spelling), notePlaces(derived, spelling)))
  return {
    ...assembled(designs, rows, selectedId, bandCents),
    title: words.titles.note,
    heading: words.columns.note,
    unreached: designs.flatMap(({ design }, i) => {
      const { places, byKey } = rows[i]!
      const notes = places.filter(({ key }) => !byKey.has(key)).map(({ label }) => label)
      return notes.length === 0 ? [] : [{ design: design.name, notes }]
    }),
  }
}

function usualCells({ design, tables }: DerivedDesign): readonly Cell[] {
  return tables.usualCombinations.map(({ fingering, semitones, errorCents }) => ({
    key: String(semitones),
    order: semitones,
    label: fingering,
    cents: errorCents,
    note: fingering,
    selection: { kind: 'fingering', designId: design.id, fingering },
  }))
}

function allCells({ design, tables }: DerivedDesign): readonly Cell[] {
  return tables.combinations.map(({ fingering, semitones, pressed, errorCents }) => ({
    key: fingering,
    order: semitones + pressed.length / 100,
    label: fingering,
    cents: errorCents,
    note: null,
    selection: { kind: 'fingering', designId: design.id, fingering },
  }))
}

function notePlace(midi: number, spelling: Spelling): Place {
  return {
    key: String(midi),
    order: midi,
    label: noteName(midi, spelling),
    short: shortName(midi, spelling),
  }
}

function notePlaces({ tables }: DerivedDesign, spelling: Spelling): readonly Place[] {
  return tables.notes.map(({ midi }) => notePlace(midi, spelling))
}

function noteCells({ design, tables }: DerivedDesign, spelling: Spelling): readonly Cell[] {
  return tables.notes.flatMap((note) => {
    const played = playedCandidate(note)
    if (played === null) return []
    return [
      {
        ...notePlace(note.midi, spelling),
        cents: played.errorCents,
        note: playedAs(played),
        selection: {
          kind: 'note',
          designId: design.id,
          midi: note.midi,
          pressed: played.pressed,
          harmonic: played.harmonic,
        },
      },
    ]
  })
}

/** The name of a note without its octave, which each C keeps. */
function shortName(midi: number, spelling: Spelling): string {
  const name = noteName(midi, spelling)
  return midi % 12 === 0 ? name : name.replace(/[\d−-]+$/, '')
}

/** A fingering and its harmonic, as one says it: `1-3 on 3`. */
export function playedAs({ fingering, harmonic }: Candidate): string {
  return words.playedAs(fingering, harmonic)
}

/** No chart or table shows more; the first ones are those of the fewest valves. */
const mostCategories = 256

/** Lines the designs' cells up on common categories; the selected design's labels win. */
function assembled(
  designs: readonly DerivedDesign[],
  rows: readonly Row[],
  selectedId: string | null,
  bandCents: number,
): Omit<CurvesModel, 'title' | 'heading' | 'unreached'> {
  const categories = new Map<string, Place>()
  const first = designs.findIndex(({ design }) => design.id === selectedId)
  const inOrder = first < 0 ? rows : [rows[first]!, ...rows.toSpliced(first, 1)]
  for (const { places } of inOrder) {
    for (const place of places) if (!categories.has(place.key)) categories.set(place.key, place)
  }
  const sorted = [...categories.values()].slice(0, mostCategories).sort((a, b) => a.order - b.order)
  return {
    bandCents,
    leftOut: categories.size - sorted.length,
    categories: sorted.map(({ key, label, short }) =>
      short === undefined ? { key, label } : { key, label, short },
    ),
    series: designs.map(({ design, series }, i) => ({
      id: design.id,
      name: design.name === '' ? lineUpWords.nameless : design.name,
      series,
      values: sorted.map(({ key }) => rows[i]!.byKey.get(key)?.cents ?? null),
      notes: sorted.map(({ key }) => rows[i]!.byKey.get(key)?.note ?? null),
    })),
    cells: rows.map(({ byKey }) => sorted.map(({ key }) => byKey.get(key)?.selection ?? null)),
  }
}

/** The place of a selection in the chart. */
export function placeOfSelection(
  model: CurvesModel,
  selection: Selection | null,
): { series: number; category: number } | null {
  if (selection === null) return null
  for (const [series, cells] of model.cells.entries()) {
    const category = cells.findIndex((cell) => cell !== null && sameSelection(cell, selection))
    if (category >= 0) return { series, category }
  }
  return null
}

function sameSelection(a: Selection, b: Selection): boolean {
  if (a.designId !== b.designId) return false
  if (a.kind === 'fingering') return b.kind === 'fingering' && a.fingering === b.fingering
  return (
    b.kind === 'note' &&
    a.midi === b.midi &&
    a.harmonic === b.harmonic &&
    a.pressed.join() === b.pressed.join()
  )
}
