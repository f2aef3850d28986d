import { noteName } from '#shared/pitch/noteName.ts'
import { lengthText, signedCents } from '#shared/quantity/figures.ts'
import { playedCandidate } from '#shared/tuning/notes.ts'
import { gateWords } from '#shared/valves/gate.ts'
import { type BenchList, benchLists } from '#shared/workbook/bench.ts'
import { jobsOf } from '#shared/workbook/commands/benchCommands.ts'
import type { Workbook } from '#shared/workbook/workbook.ts'
import { showJob } from '../bench/benchStore.ts'
import { type DerivedDesign, derive } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import { select, selectDesign, useView } from '../state/viewStore.ts'
import { useWorkbook } from '../state/workbookStore.ts'
import { benchWords } from '../words/bench.ts'
import { findWords as words } from '../words/find.ts'
import { loopWords, valveWords } from '../words/tubing.ts'
import { focusWhenThere } from './fields.ts'
import type { Item } from './item.ts'

/** All that the open workbook holds: designs, their valves and loops, the selected design's notes and fingerings. */
export function workbookItems(): readonly Item[] {
  const { workbook } = useWorkbook.getState()
  if (workbook === null) return []
  const { designId } = useView.getState()
  const all = workbook.designs.map((design, series) => derive(workbook, design, series))
  const selected = all.find(({ design }) => design.id === designId) ?? all[0]
  // The selected design comes first where names are alike.
  const inOrder = selected === undefined ? all : [selected, ...all.filter((each) => each !== selected)]
  return [
    ...all.map(designItem),
    ...inOrder.flatMap((each) => [...loopItems(each), ...valveItems(each)]),
    ...benchLists.flatMap((list) => jobItems(workbook, list)),
    ...(selected === undefined ? [] : [...noteItems(selected), ...fingeringItems(selected)]),
  ]
}

function designItem({ design }: DerivedDesign): Item {
  return { kind: 'design', name: design.name, act: () => selectDesign(design.id) }
}

function loopItems({ design }: DerivedDesign): readonly Item[] {
  const { unit } = useSettings.getState()
  return design.loops.map((loop) => {
    const name = loop.name ?? loop.id
    return {
      kind: 'loop',
      name,
      detail: `${lengthText(loop.lengthMm, unit)}, ${gateWords(loop)}, ${words.of(design.name)}`,
      alsoCalled: design.name,
      // A loop named after its fingering comes after the fingering.
      weight: 0.05,
      act: () => {
        selectDesign(design.id)
        useView.setState({ loopId: loop.id })
        focusWhenThere(loopWords.lengthOf(name))
      },
    }
  })
}

function valveItems({ design }: DerivedDesign): readonly Item[] {
  return design.valves.map(({ id }) => ({
    kind: 'valve',
    name: words.valve(id),
    detail: words.of(design.name),
    alsoCalled: design.name,
    act: () => {
      selectDesign(design.id)
      focusWhenThere(valveWords.dropOf(id))
    },
  }))
}

function jobItems(workbook: Workbook, list: BenchList): readonly Item[] {
  return jobsOf(workbook, list).map(({ id }) => ({
    kind: 'job',
    name: id,
    detail: benchWords.lists[list].title,
    act: () => {
      useView.setState({ page: 'bench' })
      showJob(list, id)
    },
  }))
}

/** Each note with the fingering that counts for it. */
function noteItems({ design, tables }: DerivedDesign): readonly Item[] {
  const { spelling } = useSettings.getState()
  const other = spelling === 'flats' ? 'sharps' : 'flats'
  return tables.notes.flatMap((note): readonly Item[] => {
    const played = playedCandidate(note)
    if (played === null) return []
    const { fingering, pressed, harmonic, errorCents } = played
    return [
      {
        kind: 'note',
        name: noteName(note.midi, spelling),
        detail: words.noteDetail(fingering, harmonic, signedCents(errorCents)),
        alsoCalled: noteName(note.midi, other),
        // A4 is first of all the pitch that everything is measured against.
        weight: 0.1,
        act: () => {
          const onCurves = useView.getState().page === 'curves'
          useView.setState(onCurves ? { by: 'note' } : { page: 'fingerings' })
          select({ kind: 'note', designId: design.id, midi: note.midi, pressed, harmonic })
        },
      },
    ]
  })
}

function fingeringItems({ design, tables }: DerivedDesign): readonly Item[] {
  return tables.combinations.map(({ fingering, errorCents }) => ({
    kind: 'fingering',
    name: fingering === '0' ? words.openFingering : fingering,
    detail: words.centsDetail(signedCents(errorCents)),
    act: () => {
      useView.setState({ page: 'curves', by: 'fingering' })
      select({ kind: 'fingering', designId: design.id, fingering })
    },
  }))
}
