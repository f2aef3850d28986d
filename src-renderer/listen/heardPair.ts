import { ratioOfCents } from '#shared/pitch/cents.ts'
import { noteName, type Spelling } from '#shared/pitch/noteName.ts'
import { targetHz } from '#shared/pitch/reference.ts'
import { accountOf } from '#shared/tuning/account.ts'
import { harmonicHz } from '#shared/tuning/candidates.ts'
import type { DerivedDesign } from '../state/derived.ts'
import type { Selection } from '../state/viewStore.ts'
import { listenWords } from '../words/listen.ts'

/** A selected cell as two frequencies to hear against each other. */
export interface HeardPair {
  readonly title: string
  readonly noteHz: number
  readonly targetHz: number
  readonly errorCents: number
}

/**
 * What the selected cell sounds like against its target; `null` when nothing of this design is selected. A
 * fingering alone is heard on the harmonic that is asked for, against the same harmonic of the tube it needs.
 */
export function heardPair(
  derived: DerivedDesign,
  selection: Selection | null,
  onHarmonic: number,
  spelling: Spelling,
): HeardPair | null {
  if (selection === null || selection.designId !== derived.design.id) return null
  return selection.kind === 'note'
    ? notePair(derived, selection, spelling)
    : fingeringPair(derived, selection.fingering, onHarmonic)
}

function notePair(
  { design, instrument, tables }: DerivedDesign,
  { midi, pressed, harmonic }: Extract<Selection, { kind: 'note' }>,
  spelling: Spelling,
): HeardPair | null {
  const known = new Set(design.valves.map(({ id }) => id))
  if (!pressed.every((id) => known.has(id))) return null
  const row = tables.combinations.find((each) => each.pressed.join('-') === pressed.join('-'))
  const account = accountOf(instrument, pressed, harmonic, midi, row?.semitones)
  const target = targetHz(midi, instrument.reference)
  return {
    title: listenWords.noteOf(noteName(midi, spelling), account.fingering, harmonic),
    noteHz: target * ratioOfCents(account.totalCents),
    targetHz: target,
    errorCents: account.totalCents,
  }
}

function fingeringPair(
  { instrument, tables }: DerivedDesign,
  fingering: string,
  harmonic: number,
): HeardPair | null {
  const row = tables.combinations.find((each) => each.fingering === fingering)
  if (row === undefined) return null
  return {
    title: fingering === '0' ? listenWords.open : fingering,
    noteHz: harmonicHz(instrument, row.lengthMm, harmonic),
    targetHz: harmonicHz(instrument, row.requiredLengthMm, harmonic),
    errorCents: row.errorCents,
  }
}
