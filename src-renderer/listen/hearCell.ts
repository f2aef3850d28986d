import { comparison } from '#shared/sound/comparison.ts'
import type { DerivedDesign } from '../state/derived.ts'
import { useSettings } from '../state/settings.ts'
import type { Selection } from '../state/viewStore.ts'
import { heardPair } from './heardPair.ts'
import { listenTo } from './listenActions.ts'
import { useListen } from './listenStore.ts'

/** A fingering alone has no note; this harmonic is comfortable to hear on most instruments. */
export const firstHarmonic = 4

/** Plays a cell as it sounds, with the panel open that shows what is heard. */
export function hearCell(derived: DerivedDesign, cell: Selection): void {
  useListen.setState({ open: true })
  const pair = heardPair(derived, cell, firstHarmonic, useSettings.getState().spelling)
  if (pair !== null) void listenTo('note', comparison('note', pair.noteHz, pair.targetHz))
}
